// flags: -mmcu=atmega328p
static unsigned char grid[3][4];
int cube[2][3][4];
unsigned char *cell = &grid[1][2];
void f(int i, int (*row)[4], unsigned char (*g)[4])
{
    grid[1][2] = 3;
    grid[i][2] = 4;
    (&grid[1])[1][0] = 5;
    (*grid)[1] = 6;
    row[1][i] = 7;
    (*row)[i] = 8;
    cube[1][i][2] = 9;
    g = grid + 1;
    f(1, cube[1], grid);
}
// expect: global cube : [48]
// expect: global cell : p16 = (&grid + 6)
// expect: global static grid : [12]
// expect: function f(i : i16, row : p16, g : p16) : void
// expect:   u8[(&grid + 6)] = 3:u8
// expect:   u8[((&grid + i16[&i] * 4) + 2)] = 4:u8
// expect:   u8[(&grid + 8)] = 5:u8
// expect:   u8[(&grid + 1)] = 6:u8
// expect:   i16[((p16[&row] + 8) + i16[&i] * 2)] = 7:i16
// expect:   i16[(p16[&row] + i16[&i] * 2)] = 8:i16
// expect:   i16[(((&cube + 24) + i16[&i] * 8) + 4)] = 9:i16
// expect:   p16[&g] = (&grid + 4)
// expect:   call:void f(1:i16, (&cube + 24), &grid)
