// flags: arm-none-eabi-gcc -mcpu=cortex-m0plus
// A register of four bytes is not read in parts where a field crosses bytes.
typedef struct { unsigned int low : 4, cross : 8, mid : 12, high : 8; } control;
#define CONTROL (*(volatile control *)0x40001000)
void main(void)
{
    CONTROL.low = 1;
    CONTROL.cross = 2;
    CONTROL.mid = 3;
    CONTROL.high = 4;
}
// expect: function main() : void
// expect:   u32![0x40001000].0..3/8 = 1:u32
// expect:   u32![0x40001000].4..11/16 = 2:u32
// expect:   u32![0x40001000].12..23/32 = 3:u32
// expect:   u32![0x40001003].0..7/8 = 4:u32
