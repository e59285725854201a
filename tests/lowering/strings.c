// flags: -mmcu=atmega328p
// Each literal is an object; escapes and the closing zero are bytes.
const char *message = "hi" " \x41\102\n\0z";
char exact[3] = "abc", longer[6] = "ab", sized[] = "q\"\\";
const char *const list[] = { "a", "a" };
const unsigned int wide[] = u"\u00e9x";
char utf[] = "é";
char f(int n)
{
    const char *p = "abc" + 1;
    char local[] = "hey";
    return "xyz"[n] + *"q" + sizeof("four") + local[0] + p[0] + __func__[0];
}
// expect: global message : p16 = &<string 5>
// expect: global exact : [3] = { +0: bytes/1 616263 }
// expect: global longer : [6] = { +0: bytes/1 616200000000 }
// expect: global sized : [4] = { +0: bytes/1 71225c00 }
// expect: global const list : [4] = { +0: &<string 6>, +2: &<string 7> }
// expect: global const wide : [6] = { +0: bytes/2 e90078000000 }
// expect: global utf : [3] = { +0: bytes/1 c3a900 }
// expect: global static const <string 1> : [4] = { +0: bytes/1 61626300 }
// expect: global static const <string 2> : [4] = { +0: bytes/1 78797a00 }
// expect: global static const <string 3> : [2] = { +0: bytes/1 7100 }
// expect: global static const <string 4> : [2] = { +0: bytes/1 6600 }
// expect: global static const <string 5> : [9] = { +0: bytes/1 68692041420a007a00 }
// expect: global static const <string 6> : [2] = { +0: bytes/1 6100 }
// expect: global static const <string 7> : [2] = { +0: bytes/1 6100 }
// expect: function f(n : i16) : i8
// expect:   local p : p16 = (&<string 1> + 1)
// expect:   local local : [4] = { +0: bytes/1 68657900 }
// expect:   return i8(((((u16((i16(i8[(&<string 2> + i16[&n] * 1)]) + i16(i8[&<string 3>]))) + 5:u16) + u16(i8[&local])) + u16(i8[p16[&p]])) + u16(i8[&<string 4>])))
