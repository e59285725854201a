// flags: -mmcu=atmega328p
// Where a constant lies does not matter to the analysis.
const __flash unsigned char table[] = { 1, 2, 3, 4, 5, 6, 7, 8, 9 };
const __memx char text[] = "x";
const __memx char *far = text;
unsigned char f(const __flash unsigned char *p) { return *p + table[2]; }
// expect: global const table : [9] = { +0: bytes/1 010203040506070809 }
// expect: global const text : [2] = { +0: bytes/1 7800 }
// expect: global far : p16 = &text
// expect: function f(p : p16) : u8
// expect:   return u8((i16(u8[p16[&p]]) + i16(u8[(&table + 2)])))
