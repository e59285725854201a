// flags: -mmcu=atmega328p
struct pin { volatile unsigned char *port; unsigned char bit; };
void use(const struct pin *p);
void take(struct pin p);
static const struct pin *fixed = &(const struct pin){ (volatile unsigned char *)0x25, 3 };
int *numbers = (int[]){ 1, 2, 3 };
void main(void)
{
    use(&(struct pin){ (volatile unsigned char *)0x28, 1 });
    take((struct pin){ .bit = 2 });
    use((struct pin[]){ { 0, 1 }, { 0, 2 } });
    int n = ((int[]){ 4, 5 })[1];
    use(fixed);
}
// expect: global numbers : p16 = &<literal 5>
// expect: global static fixed : p16 = &<literal 6>
// expect: global static <literal 5> : [6] = { +0: 1:i16, +2: 2:i16, +4: 3:i16 }
// expect: global static const <literal 6> : [3] = { +0: 0x25, +2: 3:u8 }
// expect: function main() : void
// expect:   call:void use((temporary <literal 1> : [3] = { +0: 0x28, +2: 1:u8 }))
// expect:   call:void take([3][(temporary <literal 2> : [3] = { +2: 2:u8 })])
// expect:   call:void use((temporary <literal 3> : [6] = { +0: 0x0, +2: 1:u8, +3: 0x0, +5: 2:u8 }))
// expect:   local n : i16 = i16[((temporary <literal 4> : [4] = { +0: 4:i16, +2: 5:i16 }) + 2)]
// expect:   call:void use(p16[&fixed])
