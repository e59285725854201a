// flags: -mmcu=atmega328p
// The unit of an access is the smallest that holds the field.
struct flags {
    unsigned char a : 1, b : 3;
    unsigned char : 2;
    unsigned char c : 2;
    unsigned int wide : 10;
    signed char s : 4;
    unsigned long big : 20;
} flags = { 1, 2, .wide = 0x155, .s = -1 };
#define REG (*(volatile struct flags *)0x100)
int f(struct flags *p)
{
    p->a = 1;
    p->b += 2;
    p->c++;
    REG.wide = 3;
    p->s = p->s >> 1;
    p->big ^= 0x80000;
    return -p->b + p->wide;
}
// expect: global flags : [6] = { +0.0..0/8: 1:u8, +0.1..3/8: 2:u8, +0.8..17/32: 341:u16, +2.2..5/8: -1:i8 }
// expect: function f(p : p16) : i16
// expect:   u8[p16[&p]].0..0/8 = 1:u8
// expect:   u8[p16[&p]].1..3/8 += 2:i16 in i16
// expect:   u8[p16[&p]].6..7/8 += 1:i16 in i16 (old)
// expect:   u16![0x100].8..17/32 = 3:u16
// expect:   i8[(p16[&p] + 2)].2..5/8 = i8((i16(i8[(p16[&p] + 2)].2..5/8) >> 1:i16))
// expect:   u32[(p16[&p] + 2)].6..25/32 ^= 524288:u32 in u32
// expect:   return (-:i16(i16(u8[p16[&p]].1..3/8)) + i16(u16[p16[&p]].8..17/32))
