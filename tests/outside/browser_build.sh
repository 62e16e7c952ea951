#!/usr/bin/env bash
# The desk, compiled for the browser, answers a story byte for byte as the native one does.
#   browser_build.sh install | compile | STORY
# Uses rustup's target where it is installed, else Debian's rustc-web, which compiles the
# standard library from its own sources.
set -euo pipefail
cd "$(dirname "$0")/../.."
out=target/check/browser
target=wasm32-unknown-unknown
export CARGO_INCREMENTAL=0
mkdir -p "$out"

here() { [ -d "$(rustc --print sysroot)/lib/rustlib/$target" ]; }

install() {
    if ! here && ! ls -d /usr/src/rustc-*/library >/dev/null 2>&1; then
        DEBIAN_FRONTEND=noninteractive apt-get install -y -qq rustc-web cargo-web rust-web-src lld >/dev/null
    fi
}

compile() {
    local build=(build -q -p spinney-desk --example replay_in_the_browser --target "$target"
        --target-dir "$out/build" --profile browser)
    if here; then
        cargo "${build[@]}"
    else
        local linker
        linker=$(dirname "$(find "$(rustc --print sysroot)" -name rust-lld | head -1)")
        PATH="$linker:$PATH" RUSTC=/usr/bin/rustc RUSTC_BOOTSTRAP=1 \
            /usr/bin/cargo "${build[@]}" -Z build-std=std,panic_abort
    fi
}

case "$1" in
install) install ;;
compile) compile ;;
*)
    install
    compile
    cargo run -q -p spinney-desk --example replay <"$1" >"$out/native.bin"
    wasm=$(find "$out/build/$target/browser/examples" -name '*replay_in_the_browser.wasm' | head -1)
    node tests/outside/browser_build.mjs "$wasm" "$1" "$out/browser.bin"
    cmp "$out/native.bin" "$out/browser.bin"
    ;;
esac
