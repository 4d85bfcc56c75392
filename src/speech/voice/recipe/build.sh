#!/usr/bin/env bash
# Builds public/voice/voice.wasm and its manifest from Debian's source package. Run by hand when the voice changes; never in CI.
#   apt-get install clang-16 lld-16 wasi-libc libclang-rt-16-dev-wasm32
#   build.sh FOLDER_OF_UNPACKED_SOURCE [VOICE]      (apt-get source flite; version 2.2)
set -euo pipefail
source_dir=$(realpath "$1")
voice=${2:-cmu_us_kal16}
here=$(cd "$(dirname "$0")" && pwd)
out=$here/../../../../public/voice
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

# The source jumps out of fatal errors with setjmp, which WebAssembly lacks: a fatal error ends the module instead, and the next voice speaks.
cat >"$work/setjmp.h" <<'H'
#include <stdlib.h>
typedef int jmp_buf[1];
#define setjmp(buffer) (0)
#define longjmp(buffer, value) abort()
H

cc=(clang-16 --target=wasm32-wasi --sysroot=/usr "-I$work" -I/usr/include/wasm32-wasi -O2 -w -Iinclude -Ilang/usenglish -Ilang/cmulex)
cd "$source_dir"
parts=(src/cg/*.c src/hrg/*.c src/lexicon/*.c src/regex/*.c src/speech/*.c src/stats/*.c src/synth/*.c src/wavesynth/*.c)
for name in alloc args endian error features file_stdio mmap_none string tokenstream url val val_const val_user wchar; do
  parts+=("src/utils/cst_$name.c")
done
for name in lex lts_rules lts_model postlex lex_entries lex_data; do parts+=("lang/cmulex/cmu_$name.c"); done
for part in "${parts[@]}" lang/usenglish/*.c "lang/$voice"/*.c; do
  "${cc[@]}" -DNO_UNION_INITIALIZATION -DCST_NO_SOCKETS -c "$part" -o "$work/$(tr / _ <<<"$part").o"
done
"${cc[@]}" -DVOICE="register_$voice" -c "$here/speaker.c" -o "$work/speaker.o"
mkdir -p "$out"
clang-16 --target=wasm32-wasi --sysroot=/usr -mexec-model=reactor -O2 -Wl,--gc-sections -Wl,--strip-all -Wl,-z,stack-size=262144 \
  "$work"/*.o -lm -o "$out/voice.wasm"
cp COPYING "$out/COPYING.txt"
cat >"$out/voice.json" <<J
{
  "file": "voice.wasm",
  "bytes": $(stat -c %s "$out/voice.wasm"),
  "sha256": "$(sha256sum "$out/voice.wasm" | cut -d' ' -f1)",
  "recipe": "Debian source package flite 2.2, voice $voice, clang 16, wasi-libc; src/speech/voice/recipe/build.sh",
  "licence": "BSD-like, see COPYING.txt"
}
J
cat "$out/voice.json"
