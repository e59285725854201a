// flags: -mmcu=atmega328p
int f(void)
{
    static unsigned char count = 4;
    static int big[100];
    {
        static unsigned char count = 9;
        count--;
    }
    static int *const where = &big[3];
    count++;
    return *where + count;
}
// expect: global static count : u8 = 4:u8
// expect: global static big : [200]
// expect: global static count : u8 = 9:u8
// expect: global static const where : p16 = (&big + 6)
// expect: function f() : i16
// expect:   block {
// expect:     u8[&count] -= 1:i16 in i16 (old)
// expect:   }
// expect:   u8[&count] += 1:i16 in i16 (old)
// expect:   return (i16[p16[&where]] + i16(u8[&count]))
