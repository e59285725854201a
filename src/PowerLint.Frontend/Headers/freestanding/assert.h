#pragma once
#pragma GCC system_header
_Noreturn void abort(void);
#ifdef NDEBUG
#define assert(condition) ((void)0)
#else
#define assert(condition) ((condition) ? (void)0 : abort())
#endif
#define static_assert _Static_assert
