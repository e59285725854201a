// flags: -mmcu=atmega328p
// However a header spells an address, it folds to a number.
typedef unsigned char uint8_t;
typedef struct { volatile uint8_t DIR, DIRSET, DIRCLR, DIRTGL, OUT; volatile uint8_t spare[11]; volatile uint8_t PINCTRL[8]; } PORT_t;
#define PORTA (*(PORT_t *)0x0600)
#define PORTS ((PORT_t *)0x0600)
void main(void)
{
    PORTA.DIR = 1;
    PORTS->OUT = 2;
    PORTS[2].DIRSET = 3;
    PORTA.PINCTRL[4] = 4;
    (&PORTA.PINCTRL[0])[3] = 5;
    *(volatile uint8_t *)((unsigned)&PORTA + 4) = 6;
    *(&PORTA.DIR + 2) = 7;
    3[PORTA.PINCTRL] = 8;
    ((volatile uint8_t *)&PORTA)[1] = 9;
}
// expect: function main() : void
// expect:   u8![0x600] = 1:u8
// expect:   u8![0x604] = 2:u8
// expect:   u8![0x631] = 3:u8
// expect:   u8![0x614] = 4:u8
// expect:   u8![0x613] = 5:u8
// expect:   u8![0x604] = 6:u8
// expect:   u8![0x602] = 7:u8
// expect:   u8![0x613] = 8:u8
// expect:   u8![0x601] = 9:u8
