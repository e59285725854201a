// device: atmega2560
// flags: -DF_CPU=1000000UL -Wall
// Watches the gates of a lock chamber on a canal: two contacts wake it, and it counts which gate moved.
#include "gates.h"
#include "idle_time.h"
#include "ports.h"

int main(void)
{
    ports_init();
    gates_init();

    while (1)
        idle_time();
}
