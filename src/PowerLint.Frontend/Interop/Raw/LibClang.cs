using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

// All that crosses into the library is plain data: calls need no stubs that would be compiled while the program runs.
[assembly: DisableRuntimeMarshalling]

namespace PowerLint.Frontend;

/// <summary>
/// The part of libclang's C interface that the front end uses, one to one. Calls that only look at a field of a node are made without
/// telling the garbage collector.
/// </summary>
internal static unsafe partial class LibClang
{
    private const string Library = NativeLibraryLoader.Name;

    [LibraryImport(Library)]
    public static partial nint clang_createIndex(int excludeDeclarationsFromPCH, int displayDiagnostics);

    [LibraryImport(Library)]
    public static partial void clang_disposeIndex(nint index);

    [LibraryImport(Library)]
    public static partial CXString clang_getClangVersion();

    [LibraryImport(Library)]
    public static partial int clang_parseTranslationUnit2(
        nint index,
        byte* source_filename,
        byte** command_line_args,
        int num_command_line_args,
        CXUnsavedFile* unsaved_files,
        uint num_unsaved_files,
        uint options,
        nint* out_TU
    );

    [LibraryImport(Library)]
    public static partial void clang_disposeTranslationUnit(nint unit);

    [LibraryImport(Library)]
    public static partial nint clang_getTranslationUnitTargetInfo(nint unit);

    [LibraryImport(Library)]
    public static partial CXString clang_TargetInfo_getTriple(nint info);

    [LibraryImport(Library)]
    public static partial int clang_TargetInfo_getPointerWidth(nint info);

    [LibraryImport(Library)]
    public static partial void clang_TargetInfo_dispose(nint info);

    [LibraryImport(Library)]
    public static partial byte* clang_getCString(CXString text);

    [LibraryImport(Library)]
    public static partial void clang_disposeString(CXString text);

    [LibraryImport(Library)]
    public static partial CXCursor clang_getTranslationUnitCursor(nint unit);

    [LibraryImport(Library)]
    public static partial uint clang_visitChildren(
        CXCursor parent,
        delegate* unmanaged<CXCursor, CXCursor, nint, CXChildVisitResult> visitor,
        nint client_data
    );

    [LibraryImport(Library)]
    [SuppressGCTransition]
    public static partial int clang_Cursor_isNull(CXCursor cursor);

    [LibraryImport(Library)]
    [SuppressGCTransition]
    public static partial uint clang_equalCursors(CXCursor left, CXCursor right);

    [LibraryImport(Library)]
    [SuppressGCTransition]
    public static partial uint clang_hashCursor(CXCursor cursor);

    [LibraryImport(Library)]
    public static partial CXString clang_getCursorSpelling(CXCursor cursor);

    [LibraryImport(Library)]
    public static partial CXString clang_getCursorDisplayName(CXCursor cursor);

    [LibraryImport(Library)]
    public static partial CXString clang_Cursor_getMangling(CXCursor cursor);

    [LibraryImport(Library)]
    [SuppressGCTransition]
    public static partial CXCursor clang_getCursorReferenced(CXCursor cursor);

    [LibraryImport(Library)]
    public static partial CXCursor clang_getCursorDefinition(CXCursor cursor);

    [LibraryImport(Library)]
    public static partial CXCursor clang_getCanonicalCursor(CXCursor cursor);

    [LibraryImport(Library)]
    [SuppressGCTransition]
    public static partial uint clang_isCursorDefinition(CXCursor cursor);

    [LibraryImport(Library)]
    public static partial CXCursor clang_getCursorSemanticParent(CXCursor cursor);

    [LibraryImport(Library)]
    [SuppressGCTransition]
    public static partial CXType clang_getCursorType(CXCursor cursor);

    [LibraryImport(Library)]
    public static partial CXType clang_getCursorResultType(CXCursor cursor);

    [LibraryImport(Library)]
    public static partial CXLinkageKind clang_getCursorLinkage(CXCursor cursor);

    [LibraryImport(Library)]
    [SuppressGCTransition]
    public static partial CXStorageClass clang_Cursor_getStorageClass(CXCursor cursor);

    [LibraryImport(Library)]
    [SuppressGCTransition]
    public static partial uint clang_Cursor_isFunctionInlined(CXCursor cursor);

    [LibraryImport(Library)]
    [SuppressGCTransition]
    public static partial uint clang_Cursor_hasAttrs(CXCursor cursor);

    [LibraryImport(Library)]
    public static partial int clang_Cursor_hasVarDeclGlobalStorage(CXCursor cursor);

    [LibraryImport(Library)]
    public static partial CXCursor clang_Cursor_getVarDeclInitializer(CXCursor cursor);

    [LibraryImport(Library)]
    public static partial int clang_Cursor_getNumArguments(CXCursor cursor);

    [LibraryImport(Library)]
    public static partial CXCursor clang_Cursor_getArgument(CXCursor cursor, uint index);

    [LibraryImport(Library)]
    [SuppressGCTransition]
    public static partial CXBinaryOperatorKind clang_getCursorBinaryOperatorKind(CXCursor cursor);

    [LibraryImport(Library)]
    [SuppressGCTransition]
    public static partial CXUnaryOperatorKind clang_getCursorUnaryOperatorKind(CXCursor cursor);

    [LibraryImport(Library)]
    public static partial long clang_getEnumConstantDeclValue(CXCursor cursor);

    [LibraryImport(Library)]
    public static partial CXType clang_getEnumDeclIntegerType(CXCursor cursor);

    [LibraryImport(Library)]
    public static partial uint clang_Cursor_isBitField(CXCursor cursor);

    [LibraryImport(Library)]
    public static partial int clang_getFieldDeclBitWidth(CXCursor cursor);

    [LibraryImport(Library)]
    public static partial long clang_Cursor_getOffsetOfField(CXCursor cursor);

    [LibraryImport(Library)]
    public static partial uint clang_Cursor_isAnonymous(CXCursor cursor);

    [LibraryImport(Library)]
    [SuppressGCTransition]
    public static partial CXSourceLocation clang_getCursorLocation(CXCursor cursor);

    [LibraryImport(Library)]
    [SuppressGCTransition]
    public static partial CXSourceRange clang_getCursorExtent(CXCursor cursor);

    [LibraryImport(Library)]
    [SuppressGCTransition]
    public static partial CXSourceLocation clang_getRangeStart(CXSourceRange range);

    [LibraryImport(Library)]
    [SuppressGCTransition]
    public static partial CXSourceLocation clang_getRangeEnd(CXSourceRange range);

    [LibraryImport(Library)]
    [SuppressGCTransition]
    public static partial CXSourceRange clang_getRange(CXSourceLocation begin, CXSourceLocation end);

    [LibraryImport(Library)]
    public static partial int clang_Location_isInSystemHeader(CXSourceLocation location);

    [LibraryImport(Library)]
    public static partial void clang_getExpansionLocation(
        CXSourceLocation location,
        nint* file,
        uint* line,
        uint* column,
        uint* offset
    );

    [LibraryImport(Library)]
    public static partial void clang_getSpellingLocation(
        CXSourceLocation location,
        nint* file,
        uint* line,
        uint* column,
        uint* offset
    );

    [LibraryImport(Library)]
    public static partial CXSourceLocation clang_getLocationForOffset(nint unit, nint file, uint offset);

    [LibraryImport(Library)]
    public static partial CXString clang_getFileName(nint file);

    /// <summary>Seconds since 1970; <c>time_t</c> has 64 bits wherever the program runs.</summary>
    [LibraryImport(Library)]
    [SuppressGCTransition]
    public static partial long clang_getFileTime(nint file);

    [LibraryImport(Library)]
    public static partial nint clang_getFile(nint unit, byte* file_name);

    [LibraryImport(Library)]
    public static partial byte* clang_getFileContents(nint unit, nint file, nuint* size);

    [LibraryImport(Library)]
    public static partial void clang_getInclusions(
        nint unit,
        delegate* unmanaged<nint, CXSourceLocation*, uint, nint, void> visitor,
        nint client_data
    );

    [LibraryImport(Library)]
    [SuppressGCTransition]
    public static partial uint clang_equalTypes(CXType left, CXType right);

    [LibraryImport(Library)]
    [SuppressGCTransition]
    public static partial CXType clang_getCanonicalType(CXType type);

    [LibraryImport(Library)]
    [SuppressGCTransition]
    public static partial CXType clang_getUnqualifiedType(CXType type);

    [LibraryImport(Library)]
    [SuppressGCTransition]
    public static partial uint clang_isConstQualifiedType(CXType type);

    [LibraryImport(Library)]
    [SuppressGCTransition]
    public static partial uint clang_isVolatileQualifiedType(CXType type);

    [LibraryImport(Library)]
    public static partial CXString clang_getTypeSpelling(CXType type);

    [LibraryImport(Library)]
    [SuppressGCTransition]
    public static partial CXType clang_getPointeeType(CXType type);

    [LibraryImport(Library)]
    [SuppressGCTransition]
    public static partial CXCursor clang_getTypeDeclaration(CXType type);

    [LibraryImport(Library)]
    public static partial CXType clang_getResultType(CXType type);

    [LibraryImport(Library)]
    public static partial int clang_getNumArgTypes(CXType type);

    [LibraryImport(Library)]
    public static partial CXType clang_getArgType(CXType type, uint index);

    [LibraryImport(Library)]
    public static partial uint clang_isFunctionTypeVariadic(CXType type);

    [LibraryImport(Library)]
    public static partial CXType clang_getElementType(CXType type);

    [LibraryImport(Library)]
    public static partial CXType clang_getArrayElementType(CXType type);

    [LibraryImport(Library)]
    public static partial long clang_getArraySize(CXType type);

    [LibraryImport(Library)]
    public static partial CXType clang_Type_getValueType(CXType type);

    [LibraryImport(Library)]
    public static partial CXType clang_Type_getModifiedType(CXType type);

    [LibraryImport(Library)]
    public static partial long clang_Type_getSizeOf(CXType type);

    [LibraryImport(Library)]
    public static partial long clang_Type_getAlignOf(CXType type);

    [LibraryImport(Library)]
    public static partial uint clang_Type_visitFields(
        CXType type,
        delegate* unmanaged<CXCursor, nint, CXChildVisitResult> visitor,
        nint client_data
    );

    [LibraryImport(Library)]
    public static partial nint clang_Cursor_Evaluate(CXCursor cursor);

    [LibraryImport(Library)]
    public static partial CXEvalResultKind clang_EvalResult_getKind(nint result);

    [LibraryImport(Library)]
    public static partial long clang_EvalResult_getAsLongLong(nint result);

    [LibraryImport(Library)]
    public static partial uint clang_EvalResult_isUnsignedInt(nint result);

    [LibraryImport(Library)]
    public static partial ulong clang_EvalResult_getAsUnsigned(nint result);

    [LibraryImport(Library)]
    public static partial double clang_EvalResult_getAsDouble(nint result);

    [LibraryImport(Library)]
    public static partial void clang_EvalResult_dispose(nint result);

    [LibraryImport(Library)]
    public static partial CXString clang_Cursor_getGCCAssemblyTemplate(CXCursor cursor);

    [LibraryImport(Library)]
    public static partial uint clang_Cursor_isGCCAssemblyHasGoto(CXCursor cursor);

    [LibraryImport(Library)]
    public static partial uint clang_Cursor_getGCCAssemblyNumOutputs(CXCursor cursor);

    [LibraryImport(Library)]
    public static partial uint clang_Cursor_getGCCAssemblyNumInputs(CXCursor cursor);

    [LibraryImport(Library)]
    public static partial uint clang_Cursor_getGCCAssemblyInput(
        CXCursor cursor,
        uint index,
        CXString* constraint,
        CXCursor* expression
    );

    [LibraryImport(Library)]
    public static partial uint clang_Cursor_getGCCAssemblyOutput(
        CXCursor cursor,
        uint index,
        CXString* constraint,
        CXCursor* expression
    );

    [LibraryImport(Library)]
    public static partial uint clang_Cursor_getGCCAssemblyNumClobbers(CXCursor cursor);

    [LibraryImport(Library)]
    public static partial CXString clang_Cursor_getGCCAssemblyClobber(CXCursor cursor, uint index);

    [LibraryImport(Library)]
    public static partial uint clang_getNumDiagnostics(nint unit);

    [LibraryImport(Library)]
    public static partial nint clang_getDiagnostic(nint unit, uint index);

    [LibraryImport(Library)]
    public static partial void clang_disposeDiagnostic(nint diagnostic);

    [LibraryImport(Library)]
    public static partial CXDiagnosticSeverity clang_getDiagnosticSeverity(nint diagnostic);

    [LibraryImport(Library)]
    public static partial CXString clang_getDiagnosticSpelling(nint diagnostic);

    [LibraryImport(Library)]
    public static partial CXSourceLocation clang_getDiagnosticLocation(nint diagnostic);

    [LibraryImport(Library)]
    public static partial void clang_tokenize(nint unit, CXSourceRange range, CXToken** tokens, uint* num_tokens);

    [LibraryImport(Library)]
    public static partial void clang_disposeTokens(nint unit, CXToken* tokens, uint num_tokens);

    [LibraryImport(Library)]
    public static partial CXTokenKind clang_getTokenKind(CXToken token);

    [LibraryImport(Library)]
    public static partial CXString clang_getTokenSpelling(nint unit, CXToken token);

    [LibraryImport(Library)]
    public static partial CXSourceRange clang_getTokenExtent(nint unit, CXToken token);

    [LibraryImport(Library)]
    public static partial nint clang_getCursorPrintingPolicy(CXCursor cursor);

    [LibraryImport(Library)]
    public static partial void clang_PrintingPolicy_setProperty(nint policy, uint property, uint value);

    [LibraryImport(Library)]
    public static partial void clang_PrintingPolicy_dispose(nint policy);

    [LibraryImport(Library)]
    public static partial CXString clang_getCursorPrettyPrinted(CXCursor cursor, nint policy);

    [LibraryImport(Library)]
    public static partial CXString clang_getCursorKindSpelling(CXCursorKind kind);

    [LibraryImport(Library)]
    public static partial CXString clang_getTypeKindSpelling(CXTypeKind kind);

    [LibraryImport(Library)]
    public static partial CXString clang_getBinaryOperatorKindSpelling(CXBinaryOperatorKind kind);

    [LibraryImport(Library)]
    public static partial CXString clang_getUnaryOperatorKindSpelling(CXUnaryOperatorKind kind);
}
