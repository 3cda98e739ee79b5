#!/usr/bin/env bash
# Installs the Debian packages that are missing among the ones named on the command line; does nothing, and asks for
# no rights, when none is.
set -euo pipefail

missing=()
for package in "$@"; do
  status=$(dpkg-query --show --showformat='${db:Status-Status}' "$package" 2>/dev/null || true)
  [ "$status" = installed ] || missing+=("$package")
done
[ ${#missing[@]} -gt 0 ] || exit 0

as_root=()
if [ "$(id -u)" -ne 0 ]; then
  if ! command -v sudo >/dev/null; then
    echo "install_needs.sh: these packages are missing: ${missing[*]}; install them as root, or install sudo" >&2
    exit 1
  fi
  as_root=(sudo)
fi
echo "installing ${missing[*]}" >&2
"${as_root[@]}" apt-get update -qq >&2
"${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "${missing[@]}" >&2
