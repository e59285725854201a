// flags: -mmcu=atmega328p
typedef void (*action)(unsigned char);
static void on(unsigned char n) { (void)n; }
static void off(unsigned char n) { (void)n; }
static const action actions[] = { on, &off };
struct device { action start; } device = { .start = on };
action choose(int which) { return which ? on : off; }
void main(void)
{
    action a = off;
    a(1);
    (*a)(2);
    (**a)(3);
    actions[1](4);
    device.start(5);
    choose(1)(6);
    (a ? on : off)(7);
    if (a == on)
        a = 0;
}
// expect: global device : [2] = { +0: &on }
// expect: global static const actions : [4] = { +0: &on, +2: &off }
// expect: function static on(n : u8) : void
// expect:   u8[&n]
// expect: function static off(n : u8) : void
// expect:   u8[&n]
// expect: function choose(which : i16) : p16
// expect:   return (i16[&which] ? &on : &off)
// expect: function main() : void
// expect:   local a : p16 = &off
// expect:   call:void *p16[&a](1:u8)
// expect:   call:void *p16[&a](2:u8)
// expect:   call:void *p16[&a](3:u8)
// expect:   call:void *p16[(&actions + 2)](4:u8)
// expect:   call:void *p16[&device](5:u8)
// expect:   call:void *call:p16 choose(1:i16)(6:u8)
// expect:   call:void *(p16[&a] ? &on : &off)(7:u8)
// expect:   if (p16[&a] == &on) {
// expect:     p16[&a] = 0x0
// expect:   }
