#!/usr/bin/env bash
# Makes the Debian package, installs it into a root that holds only what it says it depends on, runs it there, and
# takes it out again. Arguments: the build folder, a folder to work in, the source folder.
set -euo pipefail
build=$1 work=$2 source=$3
export PATH=/usr/sbin:/usr/bin:/sbin:/bin LC_ALL=C.UTF-8

# To mount /proc in the root and to own its files takes root, in a space of its own for who is not.
if [ -z "${RINGFILL_IN_SPACE:-}" ]; then
  as_root=()
  [ "$(id -u)" -eq 0 ] || as_root=(--map-root-user)
  RINGFILL_IN_SPACE=yes exec unshare "${as_root[@]}" --mount bash "$0" "$@"
fi

fail() {
  echo "try_deb.sh: $*" >&2
  exit 1
}

rm -rf "$work"
mkdir -p "$work"
(cd "$build" && cpack -G DEB -B "$work/made" >"$work/cpack.txt" 2>&1) || { cat "$work/cpack.txt"; fail "cpack fails"; }
debs=("$work"/made/*.deb)
[ ${#debs[@]} -eq 1 ] || fail "not one package but ${debs[*]}"
deb=${debs[0]}
dpkg-deb --info "$deb"

root=$work/root
mapfile -t needs < <(dpkg-deb --field "$deb" Depends | tr ',' '\n' | sed 's/^ *//; s/[ (|].*//')
[ ${#needs[@]} -gt 2 ] || fail "it says it needs only ${needs[*]}"
for need in libxlsxwriter libzip; do # of the part that is loaded for a workbook alone
  grep -q "^$need" <(printf '%s\n' "${needs[@]}") || fail "it does not say that it needs $need"
done
echo "the root holds:" $(bash "$source/tests/package/clean_root.sh" "$root" "${needs[@]}")
[ ! -e "$root/usr/bin/bash" ] || fail "the root is not clean"
dpkg --root="$root" --force-not-root --install "$deb"
[ "$(dpkg-query --admindir="$root/var/lib/dpkg" --show --showformat='${db:Status-Status}' ringfill)" = installed ] || fail "not installed"
[ -z "$(dpkg --root="$root" --audit)" ] || fail "dpkg finds fault with it"
[ -z "$(dpkg --root="$root" --verify ringfill)" ] || fail "a file is not as it was packed"

# By /proc it finds its tables; without, it says so rather than look into the current folder.
there() { env -i /usr/sbin/chroot "$root" /usr/bin/ringfill "$@"; }
status=0
there materials >"$work/there.txt" 2>"$work/errors.txt" || status=$?
[ "$status" -eq 4 ] && grep -q '^/proc/self/exe: cannot be read' "$work/errors.txt" || fail "without /proc it ends with $status"
mount --rbind /proc "$root/proc"
trap 'umount -l "$root/proc"' EXIT

# The program there plans as the one of the build does, from the root's own tables and families.
cp "$source"/cli/demo/*.json "$root/tmp/"
planned=0
for job in "$root"/tmp/*.json; do
  there take "/tmp/${job##*/}" >"$work/there.txt"
  "$build/ringfill" take "$job" >"$work/here.txt"
  cmp "$work/there.txt" "$work/here.txt" || fail "${job##*/} is planned otherwise"
  planned=$((planned + 1))
done
[ "$planned" -ge 6 ] || fail "only $planned jobs were there to plan"
there materials >"$work/materials.txt"
for family in "$source"/tables/families/*.json; do
  name=$(basename "$family" .json)
  grep -q "/usr/lib.*/ringfill/plugins/$name.family" "$work/materials.txt" || fail "the family $name is not loaded from the package"
done
there sheet /tmp/dredger-pivots.json -o /tmp/sheet.html
grep -q '</html>' "$root/tmp/sheet.html" || fail "no sheet"
there quote /tmp/dredger-pivots.json -o /tmp/quote.xlsx
[ "$(head -c 2 "$root/tmp/quote.xlsx")" = PK ] || fail "no workbook"
part=$(find "$root/usr/lib" -name ringfill_workbook.part)
mv "$part" "$root/tmp/"
status=0
there quote /tmp/dredger-pivots.json -o /tmp/other.xlsx >"$work/there.txt" 2>"$work/errors.txt" || status=$?
[ "$status" -eq 4 ] && grep -q "^${part#"$root"}: cannot be loaded, and it writes workbooks: " "$work/errors.txt" ||
  fail "without the part for workbooks it ends with $status: $(cat "$work/errors.txt")"
mv "$root/tmp/ringfill_workbook.part" "$part"
if ldd "$root/usr/bin/ringfill" | grep -E 'xlsxwriter|libzip'; then fail "every run loads what a workbook takes"; fi
there check --schema | cmp - "$root/usr/share/ringfill/ringfill-job.schema.json" || fail "another schema is packed"
there check --schema result | cmp - "$root/usr/share/ringfill/ringfill-plan.schema.json" || fail "another schema of results is packed"
for file in share/man/man1/ringfill.1 share/man/man5/ringfill-job.5 share/bash-completion/completions/ringfill \
  include/ringfill/ringfill.hpp share/doc/ringfill/copyright; do
  [ -s "$root/usr/$file" ] || fail "/usr/$file is missing"
done
[ -z "$(find "$root/usr" -path '*ringfill*' -perm /022 ! -type l)" ] || fail "others may write into it"
[ -z "$(find "$root/usr" -path '*ringfill*' ! -user 0)" ] || fail "it does not belong to root"

# Without a table it says so, and looks nowhere else.
mv "$root/usr/share/ringfill/tables" "$root/tmp/tables"
if there take /tmp/dredger-pivots.json >"$work/there.txt" 2>"$work/errors.txt"; then fail "it plans without tables"; fi
grep -q '/usr/share/ringfill/tables' "$work/errors.txt" || { cat "$work/errors.txt"; fail "it does not say which folder is missing"; }
mv "$root/tmp/tables" "$root/usr/share/ringfill/tables"

dpkg --root="$root" --force-not-root --purge ringfill
left=$(find "$root/usr" "$root/etc" -name '*ringfill*')
[ -z "$left" ] || fail "left behind: $left"
echo "the package installs, runs and goes"
