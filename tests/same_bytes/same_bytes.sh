#!/usr/bin/env bash
# same_bytes.sh SOURCE WORK SHARE SHUFFLE_LINES: builds the program by both compilers, without and
# with optimisation, for any x86-64 and for one with fused multiply-add, and fails unless all print
# the same JSON figures of the example recipes, for every basis and whatever the order of lines.
# SOURCE is the source tree, WORK a folder for the builds, SHARE holds starter.table and demo/, and
# SHUFFLE_LINES is the program of that name.
set -euo pipefail
source=$1
work=$2
export NETTARE_SHARE=$3
shuffle_lines=$4
shuffles=5

compiler_of() {
    case $1 in
        gcc-*) echo g++ ;;
        clang-*) echo clang++-14 ;;
    esac
}

flags_of() {
    case $1 in
        gcc-O0*) printf '%s' -O0 ;;
        *) printf '%s' -O3 ;;
    esac
    case $1 in *-v3) printf ' %s' -march=x86-64-v3 ;; esac
}

# configure_and_build VARIANT COMPILER: the program alone, few big sources.
configure_and_build() {
    cmake -S "$source" -B "$work/$1" -G Ninja -DCMAKE_BUILD_TYPE=Release \
        -DCMAKE_CXX_COMPILER="$2" -DCMAKE_CXX_FLAGS_RELEASE="$(flags_of "$1")" \
        -DCMAKE_UNITY_BUILD=ON -DCMAKE_UNITY_BUILD_BATCH_SIZE=16 -DNETTARE_BUILD_TESTS=OFF &&
        cmake --build "$work/$1" --target nettare
}

# build VARIANT
build() {
    local compiler
    compiler=$(compiler_of "$1")
    command -v "$compiler" >/dev/null || {
        echo "The compiler $compiler is missing; install it to compare its figures." >&2
        return 1
    }
    if ! configure_and_build "$1" "$compiler" >"$work/$1.log" 2>&1; then
        tail -n 20 -- "$work/$1.log" >&2
        return 1
    fi
}

# figures VARIANT DOCUMENT BASIS
figures() {
    "$work/$1/bin/nettare" figures --json --per "$3" "$work/documents/$2.json"
}

mkdir -p "$work/documents"
names=()
for recipe in prawn-fennel-skewers barley-beetroot-patties; do
    cp -- "$NETTARE_SHARE/demo/$recipe.json" "$work/documents/$recipe-0.json"
    for ((seed = 1; seed <= shuffles; ++seed)); do
        "$shuffle_lines" "$NETTARE_SHARE/demo/$recipe.json" "$seed" \
            >"$work/documents/$recipe-$seed.json"
    done
    names+=("$recipe")
done

variants=(gcc-O0 gcc-O3 clang-O3)
if grep -qw avx2 /proc/cpuinfo && grep -qw fma /proc/cpuinfo; then
    variants+=(gcc-O0-v3 gcc-O3-v3 clang-O3-v3)
else
    echo "This processor lacks AVX2 or FMA: the variants for x86-64-v3 are left out."
fi

# Each is compared with the first variant's figures of the recipe as it is written.
reference=$work/reference
mkdir -p "$reference"
differ=0
compared=0
for variant in "${variants[@]}"; do
    start_s=$SECONDS
    build "$variant"
    build_s=$((SECONDS - start_s))
    for name in "${names[@]}"; do
        for basis in piece portion 100g batch; do
            if [ "$variant" = "${variants[0]}" ]; then
                figures "$variant" "$name-0" "$basis" >"$reference/$name-$basis.json"
            fi
            for ((seed = 0; seed <= shuffles; ++seed)); do
                figures "$variant" "$name-$seed" "$basis" >"$work/figures.json"
                compared=$((compared + 1))
                cmp -- "$reference/$name-$basis.json" "$work/figures.json" && continue
                echo "$variant, $name, order of lines $seed, per $basis: other bytes."
                differ=$((differ + 1))
            done
        done
    done
    echo "$variant: built in $build_s s, figures done"
done
echo "$compared outputs of ${#variants[@]} variants compared, $differ differ"
[ "$differ" -eq 0 ]
