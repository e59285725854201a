// flags: -mmcu=atmega328p -funsigned-char -std=gnu11
// The signs of plain characters follow the flags.
char c = '\xff';
int f(void) { return c + '\xff'; }
// expect: global c : u8 = 255:u8
// expect: function f() : i16
// expect:   return (i16(u8[&c]) + 255:i16)
