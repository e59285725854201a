// flags: -mmcu=atmega328p
// A double of this target has four bytes.
float f(float x, double d, int n)
{
    x = n;
    n = x;
    x += n;
    d = x * 2.5;
    x = 1 / 3.0f;
    x++;
    n += 1.5;
    x = -d;
    unsigned long ticks = (unsigned long)(8000000UL / 4e6 * 10);
    return n > x;
}
double sized = sizeof(double) + sizeof(long double);
// expect: global sized : f32 = 8:f32
// expect: function f(x : f32, d : f32, n : i16) : f32
// expect:   f32[&x] = f32(i16[&n])
// expect:   i16[&n] = i16(f32[&x])
// expect:   f32[&x] += f32(i16[&n]) in f32
// expect:   f32[&d] = (f32[&x] * 2.5:f32)
// expect:   f32[&x] = 0.3333333432674408:f32
// expect:   f32[&x] += 1:f32 in f32 (old)
// expect:   i16[&n] += 1.5:f32 in f32
// expect:   f32[&x] = -:f32(f32[&d])
// expect:   local ticks : u32 = 20:u32
// expect:   return f32((f32(i16[&n]) > f32[&x]))
