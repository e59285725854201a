// flags: -mmcu=atmega328p
// Tentative definitions, declarations inside functions, shadowing, what is not used.
extern int later;
int later = 3;
int tentative;
int tentative;
static int hidden, unused;
extern int elsewhere, never_used;
int f(void)
{
    extern int elsewhere;
    extern unsigned char only_here;
    int g(int);
    typedef unsigned char byte;
    struct local { byte b; } s = { 1 };
    int later = 2;
    {
        int later = later;
        extern int tentative;
        tentative = later;
    }
    hidden = g(elsewhere) + only_here;
    return later + s.b;
}
// expect: global later : i16 = 3:i16
// expect: global tentative : i16
// expect: global static hidden : i16
// expect: global extern elsewhere : i16
// expect: global extern only_here : u8
// expect: function f() : i16
// expect:   local s : [1] = { +0: 1:u8 }
// expect:   local later : i16 = 2:i16
// expect:   block {
// expect:     local later : i16 = i16[&later]
// expect:     i16[&tentative] = i16[&later]
// expect:   }
// expect:   i16[&hidden] = (call:i16 g(i16[&elsewhere]) + i16(u8[&only_here]))
// expect:   return (i16[&later] + i16(u8[&s]))
