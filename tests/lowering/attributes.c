// flags: -mmcu=atmega328p
#define NORETURN __attribute__((__noreturn__))
unsigned char keep __attribute__((section(".noinit")));
int weak_value __attribute__((weak)) = 1;
extern int second __attribute__((alias("weak_value")));
void early(void) __attribute__((naked, used, section(".init3")));
void early(void) { keep = 1; }
static __attribute__((constructor)) void before_main(void) { keep = 2; }
__attribute__((weak)) void hook(int n) { (void)n; }
void renamed(int n) __attribute__((weak, alias("hook")));
static void die(void) NORETURN;
static void die(void) { for (;;) ; }
_Noreturn void stop(void);
static __attribute__((used)) void used_by_assembly(void) { }
int main(void)
{
    if (keep + second)
        stop();
    renamed(2);
    die();
}
// expect: global uninitialized keep : u8
// expect: global weak weak_value : i16 = 1:i16
// expect: global alias(weak_value) second : i16
// expect: function naked early() : void startup .init3
// expect:   u8[&keep] = 1:u8
// expect: function static before_main() : void startup .init6
// expect:   u8[&keep] = 2:u8
// expect: function weak hook(n : i16) : void
// expect:   i16[&n]
// expect: function weak renamed(<parameter 1> : i16) : void
// expect:   call:void hook(i16[&<parameter 1>])
// expect: function static noreturn die() : void
// expect:   loop {
// expect:   }
// expect: function static used_by_assembly() : void
// expect: function main() : i16
// expect:   if (i16(u8[&keep]) + i16[&second]) {
// expect:     call:void stop()
// expect:   }
// expect:   call:void renamed(2:i16)
// expect:   call:void die()
