using System.Runtime.InteropServices;

namespace RangeMap.Store;

/// <summary>
/// The calls of SQLite that an import, or an export of records, makes a hundred million times, without the steps that the general wrapper puts before each (measured: a
/// tenth of the time of keeping records). The library is the one that the wrapper brings.
/// </summary>
internal static partial class NativeStatement
{
    private const string Library = "e_sqlite3";

    [LibraryImport(Library, EntryPoint = "sqlite3_bind_int64")]
    [SuppressGCTransition]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int BindInteger(IntPtr statement, int index, long value);

    [LibraryImport(Library, EntryPoint = "sqlite3_bind_double")]
    [SuppressGCTransition]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int BindReal(IntPtr statement, int index, double value);

    [LibraryImport(Library, EntryPoint = "sqlite3_bind_null")]
    [SuppressGCTransition]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int BindNull(IntPtr statement, int index);

    [LibraryImport(Library, EntryPoint = "sqlite3_step")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int Step(IntPtr statement);

    [LibraryImport(Library, EntryPoint = "sqlite3_reset")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int Reset(IntPtr statement);

    [LibraryImport(Library, EntryPoint = "sqlite3_column_type")]
    [SuppressGCTransition]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int ColumnType(IntPtr statement, int column);

    [LibraryImport(Library, EntryPoint = "sqlite3_column_int64")]
    [SuppressGCTransition]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial long ColumnInteger(IntPtr statement, int column);

    [LibraryImport(Library, EntryPoint = "sqlite3_column_double")]
    [SuppressGCTransition]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial double ColumnReal(IntPtr statement, int column);
}
