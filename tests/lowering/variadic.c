// flags: -mmcu=atmega328p
// Arguments beyond the prototype are promoted.
#include <stdarg.h>
int log_it(const char *format, ...);
int sum(int n, ...)
{
    va_list list;
    int total = 0;
    va_start(list, n);
    while (n--)
        total += va_arg(list, int);
    va_end(list);
    return total;
}
void f(char c, float x, long l, unsigned char u)
{
    log_it("%d", c, x, l, u, &c, 'q');
    sum(2, u, u == 3);
}
// expect: global static const <string 1> : [3] = { +0: bytes/1 256400 }
// expect: function sum(n : i16, ...) : i16
// expect:   local list : p16
// expect:   local total : i16 = 0:i16
// expect:   call:void __builtin_va_start(&list, i16[&n])
// expect:   loop while i16[&n] -= 1:i16 in i16 (old) {
// expect:     i16[&total] += call:i16 __builtin_va_arg(&list) in i16
// expect:   }
// expect:   call:void __builtin_va_end(&list)
// expect:   return i16[&total]
// expect: function f(c : i8, x : f32, l : i32, u : u8) : void
// expect:   call:i16 log_it(&<string 1>, i16(i8[&c]), f32[&x], i32[&l], i16(u8[&u]), &c, 113:i16)
// expect:   call:i16 sum(2:i16, i16(u8[&u]), (i16(u8[&u]) == 3:i16))
