#define DDRB (*(volatile unsigned char *)0x24)

void broken(void)
{
    DDRB = 1 +;
}

int main(void)
{
    for (;;)
        __asm__ __volatile__("sleep");
}
