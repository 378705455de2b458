# How the scripts speak, and how they know that nothing has changed.

say() { printf '%s\n' "springline: $*" >&2; }

stop() { say "$*"; exit 1; }

# A fingerprint of files, the same on Debian and macOS.
fingerprint() { cat "$@" | cksum | tr ' ' '-'; }

# is_fresh STAMP FINGERPRINT: true where STAMP holds FINGERPRINT.
is_fresh() { [ -f "$1" ] && [ "$(cat "$1")" = "$2" ]; }
