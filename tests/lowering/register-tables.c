// flags: -mmcu=atmega328p
// Tables of register addresses and masks.
typedef volatile unsigned char reg;
#define PORTB (*(reg *)0x25)
#define PORTC (*(reg *)0x28)
static const struct { reg *port; unsigned char mask; const char *name; } rows[] = {
    { &PORTB, 1 << 1, "led" },
    { &PORTC, 1 << 5, "relay" },
};
static reg *const ports[] = { &PORTB, &PORTC };
void main(void)
{
    for (unsigned char i = 0; i < sizeof rows / sizeof rows[0]; i++)
        *rows[i].port &= ~rows[i].mask;
    *ports[1] = 0;
}
// expect: global static const rows : [10] = { +0: 0x25, +2: 2:u8, +3: &<string 1>, +5: 0x28, +7: 32:u8, +8: &<string 2> }
// expect: global static const ports : [4] = { +0: 0x25, +2: 0x28 }
// expect: global static const <string 1> : [4] = { +0: bytes/1 6c656400 }
// expect: global static const <string 2> : [6] = { +0: bytes/1 72656c617900 }
// expect: function main() : void
// expect:   block {
// expect:     local i : u8 = 0:u8
// expect:     loop while (u16(u8[&i]) < 2:u16) step u8[&i] += 1:i16 in i16 (old) {
// expect:       u8![p16[(&rows + u8[&i] * 5)]] &= ~:i16(i16(u8[((&rows + u8[&i] * 5) + 2)])) in i16
// expect:     }
// expect:   }
// expect:   u8![p16[(&ports + 2)]] = 0:u8
