# How the scripts speak, how they know that nothing has changed, how they ask Debian.

say() { printf '%s\n' "springline: $*" >&2; }

stop() { say "$*"; exit 1; }

# A fingerprint of files, the same on Debian and macOS.
fingerprint() { cat "$@" | cksum | tr ' ' '-'; }

# is_fresh STAMP FINGERPRINT: true where STAMP holds FINGERPRINT.
is_fresh() { [ -f "$1" ] && [ "$(cat "$1")" = "$2" ]; }

# Without our lock (9): a service that a package starts would hold it for ever.
apt_install() {
  apt-get update -qq </dev/null >&2 9>&- &&
    DEBIAN_FRONTEND=noninteractive apt-get install -y -qq "$@" </dev/null >&2 9>&-
}
