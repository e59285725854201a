// flags: -mmcu=atmega328p
// Not lowered: the array itself. What stands around it is.
int g(unsigned char *p);
int f(int n)
{
    unsigned char buffer[n];
    buffer[0] = 1;
    return g(buffer);
}
// expect: function f(n : i16) : i16
// expect:   local buffer : [0]
// expect:   u8[&buffer] = 1:u8
// expect:   return call:i16 g(&buffer)
// expect: gap 6: array of variable length
