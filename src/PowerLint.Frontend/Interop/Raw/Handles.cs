using System.Runtime.InteropServices;

namespace PowerLint.Frontend;

[StructLayout(LayoutKind.Sequential)]
internal struct CXCursor
{
    public CXCursorKind kind;
    public int xdata;
    public nint data0;
    public nint data1;
    public nint data2;
}

[StructLayout(LayoutKind.Sequential)]
internal struct CXType
{
    public CXTypeKind kind;
    public nint data0;
    public nint data1;
}

[StructLayout(LayoutKind.Sequential)]
internal struct CXString
{
    public nint data;
    public uint private_flags;
}

[StructLayout(LayoutKind.Sequential)]
internal struct CXSourceLocation
{
    public nint ptr_data0;
    public nint ptr_data1;
    public uint int_data;
}

[StructLayout(LayoutKind.Sequential)]
internal struct CXSourceRange
{
    public nint ptr_data0;
    public nint ptr_data1;
    public uint begin_int_data;
    public uint end_int_data;
}

[StructLayout(LayoutKind.Sequential)]
internal struct CXToken
{
    public uint int_data0;
    public uint int_data1;
    public uint int_data2;
    public uint int_data3;
    public nint ptr_data;
}

[StructLayout(LayoutKind.Sequential)]
internal struct CXUnsavedFile
{
    public nint Filename;
    public nint Contents;
    public nuint Length;
}
