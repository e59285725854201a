// Variable arguments, macros with side effects, generic selection, initialisers, alignment, static assertions.
#include "result.h"
#include <stdarg.h>

#define SQUARE(x) ((x) * (x))
#define SQUARE_BAD(x) x * x
#define MINIMUM(a, b) ({ __typeof__(a) a_ = (a); __typeof__(b) b_ = (b); a_ < b_ ? a_ : b_; })
#define ARRAY(...) ((const uint8_t[]){__VA_ARGS__})
#define COUNT(...) (sizeof(ARRAY(__VA_ARGS__)))
#define CONCAT(a, b) a##b
#define NAME(x) #x
#define EACH(X) X(red, 3) X(green, 5) X(blue, 7)
#define AS_ENUM(name, value) CONCAT(E_, name) = value,
#define AS_SUM(name, value) +value

enum colours { EACH(AS_ENUM) E_LAST };
_Static_assert(sizeof(uint32_t) == 4, "width");

F int16_t total(uint8_t n, ...) { va_list a; va_start(a, n); int16_t s = 0; while (n--) s += va_arg(a, int); va_end(a); return s; }
F uint32_t kinds(const char *k, ...) { va_list a; va_start(a, k); uint32_t s = 0; for (; *k; k++) switch (*k) { case 'l': s += va_arg(a, uint32_t); break; case 'i': s += va_arg(a, unsigned); break; case 's': s += strlen(va_arg(a, const char *)); break; } va_end(a); return s; }
F int16_t forwarded(va_list a) { return va_arg(a, int) * va_arg(a, int); }
F int16_t forward(uint8_t n, ...) { va_list a, b; va_start(a, n); va_copy(b, a); int16_t r = forwarded(a) + va_arg(b, int); va_end(b); va_end(a); return r; }
F uint8_t designated(uint8_t i) { static const uint8_t t[8] = {[1] = 5, 6, [6] = 7, [3 ... 4] = 9}; return t[i]; }
F uint8_t reordered(void) { struct { uint8_t a, b, c; } s = {.c = 1, .a = 2, 3}; return s.a * 16 + s.b * 4 + s.c; }
F uint8_t overridden(void) { uint8_t a[] = {1, 2, [0] = 9}; return a[0] * 10 + a[1]; }
F uint8_t text(uint8_t i) { char s[6] = "ab" "cd"; return s[i]; }
F uint8_t text_size(void) { char s[] = "a\0b"; return sizeof s; }
F uint8_t escaped(void) { return "\x41\102\t"[2] + NAME(q)[0]; }
F uint16_t volatile_local(uint8_t n) { volatile uint16_t v = n; v += v; v <<= 3; return v; }
F uint8_t restricted(uint8_t *restrict a, const uint8_t *restrict b) { *a = *b + 1; return *a; }
F uint16_t constant_folding(void) { return (uint16_t)(F_CPU / 1000000UL * 1.5 + 0.5); }
F uint8_t shadow(uint8_t n) { uint8_t r = n; { uint8_t n = 3; r += n; { uint8_t n = 10; r += n; } } return r + n; }
F uint8_t typed(void) { typedef uint8_t byte_t; { typedef uint16_t byte_t; return sizeof(byte_t) * 10 + sizeof(uint8_t); } }
F uint8_t builtin(uint16_t n) { return __builtin_popcount(n) * 10 + __builtin_ctz(n); }
F uint8_t expect(uint8_t n) { return __builtin_expect(n > 3, 1) ? 1 : 2; }
F uint8_t known(void) { return __builtin_constant_p(5) + __builtin_types_compatible_p(int, int16_t); }

int main(void)
{
    uint8_t i = 3, x = 1;
    R(SQUARE(2 + 3));
    R(SQUARE_BAD(2 + 3));
    R(MINIMUM(i++, 9));
    R(i);
    R(COUNT(1, 2, 3, 4));
    R(ARRAY(4, 5, 6)[1]);
    R(E_green);
    R(E_LAST);
    R(0 EACH(AS_SUM));
    R(total(3, 10, -20, 300));
    R(total(0));
    R(kinds("lis", 100000UL, 7, "tank"));
    R(forward(2, 6, 7));
    R(designated(2));
    R(designated(4));
    R(designated(7));
    R(reordered());
    R(overridden());
    R(text(3));
    R(text(5));
    R(text_size());
    R(escaped());
    R(volatile_local(99));
    R(restricted(&x, &i));
    R(constant_folding());
    R(shadow(1));
    R(typed());
    R(builtin(0x0B50));
    R(expect(4));
    R(known());
    R(({ uint8_t t = 5; t * 3; }));
    END();
}
