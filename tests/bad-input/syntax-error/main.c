#define DDRB (*(volatile unsigned char *)0x24)
#define DDRC (*(volatile unsigned char *)0x27)
#define DDRD (*(volatile unsigned char *)0x2A)
#define SMCR (*(volatile unsigned char *)0x53)
#define PCICR (*(volatile unsigned char *)0x68)
#define PCMSK0 (*(volatile unsigned char *)0x6B)

void broken(void)
{
    DDRB = 1 +;
}

int main(void)
{
    DDRB = 0xFF;
    DDRC = 0x7F;
    DDRD = 0xFF;
    PCMSK0 = 1;
    PCICR = 1;
    __asm__ __volatile__("sei");
    SMCR = 5;
    for (;;)
        __asm__ __volatile__("sleep");
}
