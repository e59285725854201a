// flags: -mmcu=atmega328p
enum level { LOW, HIGH = 5, HIGHER, NEGATIVE = -2 } level = HIGH;
typedef enum { BIG = 0x12345678L } big;
big wide = BIG;
int f(enum level l)
{
    switch (l) {
    case LOW:
        return HIGHER;
    case NEGATIVE:
        return sizeof(enum level);
    default:
        return l + 1;
    }
}
// expect: global level : i16 = 5:i16
// expect: global wide : u32 = 305419896:u32
// expect: function f(l : i16) : i16
// expect:   switch i16[&l] {
// expect:     case 0:
// expect:     return 6:i16
// expect:     case 65534:
// expect:     return 2:i16
// expect:     default:
// expect:     return (i16[&l] + 1:i16)
// expect:   }
