#!/usr/bin/env bash
# Makes a root that holds some Debian packages of this machine and all that they depend on, and nothing else: their
# files, and a package database that knows only them. Arguments: the root, then the packages.
set -euo pipefail
root=$1
shift

mkdir -p "$root"/{dev,etc,proc,tmp,usr/{bin,sbin,lib,lib64},var/lib/dpkg/{info,updates,triggers}}
for folder in bin sbin lib lib64; do
  ln -s "usr/$folder" "$root/$folder"
done

# The names in a list of dependencies; of alternatives the first that is installed here.
names() {
  local one name
  while IFS= read -r -d, one; do
    for name in $(sed 's/([^)]*)//g; s/|/ /g; s/:any//g' <<<"$one"); do
      if dpkg-query --show "$name" >/dev/null 2>&1; then
        echo "$name"
        break
      fi
    done
  done <<<"$1,"
}

declare -A known=()
add() {
  local package=$1 needed
  [ -z "${known[$package]:-}" ] || return 0
  known[$package]=yes
  for needed in $(names "$(dpkg-query --show --showformat='${Pre-Depends}, ${Depends}' "$package")"); do
    add "$needed"
  done
  dpkg-query --status "$package" >>"$root/var/lib/dpkg/status"
  echo >>"$root/var/lib/dpkg/status"
  local lists=(/var/lib/dpkg/info/"$package".list /var/lib/dpkg/info/"$package":*.list)
  for list in "${lists[@]}"; do
    [ -f "$list" ] || continue
    cp "$list" "${list%.list}.md5sums" "$root/var/lib/dpkg/info/"
    # Files alone; what this machine left out of a package (its documents) is not missed.
    while IFS= read -r file; do
      if [ -L "$file" ] || [ -f "$file" ]; then echo "${file#/}"; fi
    done <"$list" | tar -C / -c --files-from - | tar -C "$root" -x --keep-directory-symlink
  done
}

: >"$root/var/lib/dpkg/status"
for package in "$@"; do
  add "$package"
done
printf '%s\n' "${!known[@]}" | sort
