// flags: -mmcu=atmega328p
// needs: avr-gcc
#include <avr/pgmspace.h>
static const unsigned char table[] PROGMEM = { 1, 2, 3 };
unsigned char f(unsigned char i) { return pgm_read_byte(&table[i]); }
// expect: global static const table : [3] = { +0: 1:u8, +1: 2:u8, +2: 3:u8 }
// expect: function f(i : u8) : u8
// expect:   return ({ local __addr16 : u16 = u16((&table + u8[&i] * 1)) local __result : u8 asm "lpm %0, Z\n\t" out =r u8 @ &__result in z u16[&__addr16] yield u8[&__result] })
