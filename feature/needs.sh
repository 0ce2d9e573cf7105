# Read by feature/truelead and tests/run: what the machine must have, installed on Debian as root, named otherwise.
# Everything said goes to stderr; stdout belongs to reports.

say() { printf 'truelead: %s\n' "$*" >&2; }

give_up() { say "$*"; exit 2; }

# need PACKAGE PROBE...: the Debian package that gives what the probe command looks for.
need() {
    package=$1
    shift
    if ! "$@" >/dev/null 2>&1; then missing="$missing $package"; fi
}

has_library() { PATH="$PATH:/sbin:/usr/sbin" ldconfig -p | grep -q "$1"; }

java_17_or_newer() {
    version=$(java -version 2>&1 | sed -n 's/.*version "\([0-9]*\).*/\1/p')
    [ "${version:-0}" -ge 17 ]
}

compiler_there() { [ -n "$(command -v javac)" ]; }

# Installs what need found missing, or names it and gives up.
install_missing() {
    [ -n "$missing" ] || return 0
    if [ -z "$(command -v apt-get)" ]; then give_up "missing here, please install (Debian's names):$missing"; fi
    if [ "$(id -u)" -ne 0 ]; then give_up "missing here; as root: apt-get install$missing"; fi
    say "installing Debian packages:$missing"
    export DEBIAN_FRONTEND=noninteractive
    log=$(mktemp)
    # shellcheck disable=SC2086
    if ! { apt-get update && apt-get install -y --no-install-recommends $missing; } >"$log" 2>&1; then
        tail -n 20 "$log" >&2
        rm -f "$log"
        give_up "could not install:$missing"
    fi
    rm -f "$log"
    missing=
}

missing=
need_to_build() {
    need openjdk-17-jdk-headless java_17_or_newer
    need openjdk-17-jdk-headless compiler_there
    need maven command -v mvn
}
need_to_show() {
    need libgtk-3-0 has_library libgtk-3.so.0
    need fonts-dejavu-core sh -c 'ls /usr/share/fonts/* >/dev/null'
}
