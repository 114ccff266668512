#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs the Debian packages that are missing from the lists named: app/install.sh LIST...
# Quick and quiet when nothing is missing; sudo only when not root.
set -eu

wanted=$(cat "$@" | sed -e 's/#.*//' -e '/^[[:space:]]*$/d')
missing=""
for package in $wanted; do
    status=$(dpkg-query -W -f '${db:Status-Status}' "$package" 2>/dev/null || true)
    [ "$status" = installed ] || missing="$missing $package"
done
[ -n "$missing" ] || exit 0

as_root=""
if [ "$(id -u)" -ne 0 ]; then
    command -v sudo >/dev/null || {
        echo "Missing packages, and neither root nor sudo to install them:$missing" >&2
        exit 1
    }
    as_root=sudo
fi
echo "Installing:$missing"
case "$missing" in
*postgresql-15*) # for the tests, which start their own: no server of the system's is made
    $as_root mkdir -p /etc/postgresql-common/createcluster.d
    echo "create_main_cluster = false" | $as_root tee /etc/postgresql-common/createcluster.d/slopebook-tests.conf >/dev/null
    ;;
esac
install_missing() {
    # shellcheck disable=SC2086
    $as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends $missing
}
# A fresh system has no package lists, an old one stale ones: either is mended by an update.
if ! install_missing; then
    $as_root apt-get update
    install_missing
fi
