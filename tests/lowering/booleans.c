// flags: -mmcu=atmega328p
// Conversion to _Bool asks whether the value is not zero.
_Bool flag, other = 4;
volatile _Bool ready;
int f(int n, float x, char *p)
{
    flag = n;
    flag = x;
    flag = p;
    flag = 0.5;
    ready = n & 0x100;
    flag += 2;
    flag++;
    flag = !flag;
    return flag + other;
}
// expect: global flag : bool
// expect: global other : bool = 1:bool
// expect: global volatile ready : bool
// expect: function f(n : i16, x : f32, p : p16) : i16
// expect:   bool[&flag] = bool(i16[&n])
// expect:   bool[&flag] = bool(f32[&x])
// expect:   bool[&flag] = bool(p16[&p])
// expect:   bool[&flag] = 1:bool
// expect:   bool![&ready] = bool((i16[&n] & 256:i16))
// expect:   bool[&flag] += 2:i16 in i16
// expect:   bool[&flag] += 1:i16 in i16 (old)
// expect:   bool[&flag] = bool(!:i16(bool[&flag]))
// expect:   return (i16(bool[&flag]) + i16(bool[&other]))
