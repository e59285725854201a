// flags: arm-none-eabi-gcc -mcpu=cortex-m4
// The bare-metal ABI gives an enumeration the smallest type that holds it.
enum small { A, B = 200 } small = B;
enum mid { C = 300 } mid;
int sizes[] = { sizeof(enum small), sizeof(enum mid), sizeof(int), sizeof(long), sizeof(void *), sizeof(double) };
// expect: global small : u8 = 200:u8
// expect: global mid : u16
// expect: global sizes : [24] = { +0: 1:i32, +4: 2:i32, +8: 4:i32, +12: 4:i32, +16: 4:i32, +20: 8:i32 }
