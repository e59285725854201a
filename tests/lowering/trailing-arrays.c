// flags: -mmcu=atmega328p
struct flexible { unsigned char n; int data[]; } fixed = { 2, { 7, 8 } };
struct zero { unsigned char n; unsigned char data[0]; };
int f(struct flexible *p, struct zero *z, int i)
{
    p->data[i] = 1;
    z->data[2] = 3;
    return p->data[1] + sizeof(struct flexible);
}
// expect: global fixed : [1] = { +0: 2:u8, +1: 7:i16, +3: 8:i16 }
// expect: function f(p : p16, z : p16, i : i16) : i16
// expect:   i16[((p16[&p] + 1) + i16[&i] * 2)] = 1:i16
// expect:   u8[(p16[&z] + 3)] = 3:u8
// expect:   return i16((u16(i16[(p16[&p] + 3)]) + 1:u16))
