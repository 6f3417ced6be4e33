#!/usr/bin/env bash
# Tries the project on a bare Debian 12: makes one with debootstrap, copies the checkout into a folder
# whose path has a space and an accent, and times the commands there. Run it as root on Debian:
#
#     .ci/bare_machine.sh                       site, then test
#     .ci/bare_machine.sh "check" "site"        these commands instead, each run from another folder
#
# BARE_MACHINE_KEEP=1 leaves the machine's folder for a look.
set -euo pipefail

checkout="$(cd "$(dirname "$0")/.." && pwd)"
if [ "$(id -u)" -ne 0 ]; then
    echo "run this as root: debootstrap and chroot need it" >&2
    exit 1
fi
if ! command -v debootstrap >/dev/null; then
    apt-get -qq update
    DEBIAN_FRONTEND=noninteractive apt-get -qq install --yes debootstrap
fi
if [ $# -eq 0 ]; then
    set -- site test
fi

machine="$(mktemp -d --tmpdir=/var/tmp)"
chmod 755 "$machine" # apt reads it as a user of its own
place="/home/a teacher/dänce café"

clean_up() {
    for folder in dev/shm dev/pts dev sys proc; do
        umount --quiet --lazy "$machine/$folder" 2>/dev/null || true
    done
    # Never remove through a mount that would not go.
    if [ -z "${BARE_MACHINE_KEEP:-}" ] && ! grep -q " $machine/" /proc/mounts; then
        rm -rf --one-file-system "$machine"
    else
        echo "left in place: $machine" >&2
    fi
}
trap clean_up EXIT
trap 'exit 130' INT TERM

echo "── making a bare Debian 12 in $machine"
debootstrap --variant=minbase --include=python3,ca-certificates bookworm "$machine" >/dev/null

mount -t proc proc "$machine/proc"
mount -t sysfs sysfs "$machine/sys" 2>/dev/null || true
mount --bind /dev "$machine/dev"
# Private, so that nothing mounted below it shows on this machine.
mount --make-private "$machine/dev" 2>/dev/null || true
mkdir -p "$machine/dev/shm" "$machine/dev/pts"
mount -t tmpfs tmpfs "$machine/dev/shm" 2>/dev/null || true
mount --bind /dev/pts "$machine/dev/pts"
# As the installer of a real machine writes it.
echo "127.0.0.1 localhost" >"$machine/etc/hosts"
cp --dereference /etc/resolv.conf "$machine/etc/resolv.conf"

# Behind a proxy that signs certificates anew, the machine trusts what this one trusts.
cp --dereference /etc/ssl/certs/ca-certificates.crt "$machine/etc/ssl/certs/ca-certificates.crt"
settings=(HOME=/root "PATH=/usr/local/sbin:/usr/local/bin:/usr/sbin:/usr/bin:/sbin:/bin" LANG=C.UTF-8)
for name in PIP_CERT SSL_CERT_FILE REQUESTS_CA_BUNDLE CURL_CA_BUNDLE NODE_EXTRA_CA_CERTS \
    http_proxy https_proxy no_proxy HTTP_PROXY HTTPS_PROXY NO_PROXY; do
    value="${!name:-}"
    if [ -n "$value" ]; then
        settings+=("$name=$value")
        if [ -f "$value" ]; then
            mkdir -p "$machine$(dirname "$value")"
            cp --dereference "$value" "$machine$value"
        fi
    fi
done

mkdir -p "$machine$place"
cd "$checkout"
git ls-files -z --cached --others --exclude-standard |
    while IFS= read -r -d '' file; do
        if [ -e "$file" ]; then printf '%s\0' "$file"; fi
    done |
    tar --create --null --files-from=- | tar --extract --directory="$machine$place"

inside() {
    chroot "$machine" /usr/bin/env -i "${settings[@]}" "$@" </dev/null
}
echo "── $(inside python3 --version), ensurepip: $(inside python3 -c 'import ensurepip' 2>/dev/null && echo there || echo missing)"

failed=0
for command in "$@"; do
    echo "── python3 build_tools $command"
    # shellcheck disable=SC2086
    time inside python3 "$place/build_tools" $command || failed=1
done
exit "$failed"
