/* Last resort where no toolchain's headers are found; types are the target's own. */
#pragma once
#pragma GCC system_header
typedef __PTRDIFF_TYPE__ ptrdiff_t;
typedef __SIZE_TYPE__ size_t;
typedef __WCHAR_TYPE__ wchar_t;
/* The C library of bare-metal Arm asks this header for it, as its own compiler gives it. */
typedef __WINT_TYPE__ wint_t;
typedef struct {
    long long integer __attribute__((aligned(__alignof__(long long))));
    long double real __attribute__((aligned(__alignof__(long double))));
} max_align_t;
#define NULL ((void *)0)
#define offsetof(type, member) __builtin_offsetof(type, member)
