#!/usr/bin/env bash
# Makes the fonts of printed maps from Debian's fonts-noto-core with python3-fonttools and python3-brotli:
# Latin, Greek, Cyrillic and the signs that maps need; no hinting, which printing does not use. Run in this folder.
set -euo pipefail
readonly source=${1:-/usr/share/fonts/truetype/noto}
readonly signs='U+0020-007E,U+00A0-017F,U+0192,U+0218-021B,U+0259,U+0386-03CE,U+0400-045F,U+1E80-1E85,U+1EF2-1EF3,U+2010-2015,U+2018-201E,U+2020-2022,U+2026,U+2030,U+2032-2033,U+2039-203A,U+2044,U+20AC,U+2116,U+2190-2193,U+2212,U+2264-2265,U+2640,U+2642'
for face in Regular Italic Bold; do
  for flavor in ttf woff2; do
    /usr/bin/python3 -m fontTools.subset "$source/NotoSans-$face.ttf" --unicodes="$signs" --no-hinting --notdef-outline \
      --layout-features=kern,mark,mkmk,ccmp,locl --name-IDs=0,1,2,3,4,5,6,13,14 --output-file="NotoSans-$face.$flavor" \
      $([[ $flavor == woff2 ]] && echo --flavor=woff2)
  done
done
