// flags: -mmcu=atmega328p
int g(int);
int f(int n, const void *p)
{
    if (__builtin_expect(n == 3, 0))
        n = __builtin_choose_expr(sizeof(int) == 2, 10, g(1));
    n = __builtin_constant_p(n);
    n = __builtin_constant_p(4 + 5);
    n = __builtin_types_compatible_p(int, unsigned);
    n = __builtin_bswap16(0x1234);
    n = __builtin_popcount(n);
    __builtin_memcpy(&n, p, 2);
    n = __builtin_abs(n);
    float x = __builtin_inff();
    if (n)
        __builtin_trap();
    __builtin_unreachable();
}
// expect: function f(n : i16, p : p16) : i16
// expect:   if i32((i16[&n] == 3:i16)) {
// expect:     i16[&n] = 10:i16
// expect:   }
// expect:   i16[&n] = 0:i16
// expect:   i16[&n] = 1:i16
// expect:   i16[&n] = 0:i16
// expect:   i16[&n] = 13330:i16
// expect:   i16[&n] = call:i16 __builtin_popcount(u16(i16[&n]))
// expect:   call:p16 memcpy(&n, p16[&p], 2:u16)
// expect:   i16[&n] = call:i16 abs(i16[&n])
// expect:   local x : f32 = Infinity:f32
// expect:   if i16[&n] {
// expect:     call:void __builtin_trap()
// expect:   }
// expect:   call:void __builtin_unreachable()
