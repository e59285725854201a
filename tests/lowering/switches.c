// flags: -mmcu=atmega328p
// Labels in any nesting, ranges, negative and wide values.
#define P (*(volatile unsigned char *)0x25)
int f(int n, unsigned char c)
{
    switch (n) {
    case 0:
        if (c) {
        case 5:
            P = 1;
        }
        break;
    case 'a' ... 'f': {
        switch (c) {
        case 200:
            return 1;
        }
    }
    // fall through
    case -1:
    default:
        do {
        case 7:
            n--;
        } while (n > 0);
    }
    switch (c)
    case 1:
        P = 2;
    return n;
}
// expect: function f(n : i16, c : u8) : i16
// expect:   switch i16[&n] {
// expect:     case 0:
// expect:     if u8[&c] {
// expect:       case 5:
// expect:       u8![0x25] = 1:u8
// expect:     }
// expect:     break
// expect:     case 97..102:
// expect:     block {
// expect:       switch i16(u8[&c]) {
// expect:         case 200:
// expect:         return 1:i16
// expect:       }
// expect:     }
// expect:     case 65535:
// expect:     default:
// expect:     loop after while (i16[&n] > 0:i16) {
// expect:       case 7:
// expect:       i16[&n] -= 1:i16 in i16 (old)
// expect:     }
// expect:   }
// expect:   switch i16(u8[&c]) {
// expect:     case 1:
// expect:     u8![0x25] = 2:u8
// expect:   }
// expect:   return i16[&n]
