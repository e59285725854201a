#define PORTB (*(volatile unsigned char *)0x25)

void lamp_on(void)
{
    PORTB |= 1;
}
