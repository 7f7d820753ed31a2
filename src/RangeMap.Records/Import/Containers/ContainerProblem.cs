using static System.FormattableString;

namespace RangeMap.Records;

/// <summary>The problems of packed files, each with the entry at fault.</summary>
internal static class ContainerProblem
{
    public static ImportProblemException Of(string what, string where, string mend) => new(new(what, where, mend));

    public static ImportProblemException Damaged(string name, string detail) =>
        Of($"{name} is damaged. {detail}", name, "Was it sent whole? Ask for it again, or pack it again.");

    public static ImportProblemException TooLarge(string name, long bytes) =>
        Of(Invariant($"{name} unpacks to more than {bytes:N0} bytes."), name, "Unpack it and import the table itself, or raise the limit if you trust the file.");

    public static ImportProblemException TooDense(string name, int ratio) =>
        Of(Invariant($"{name} unpacks to more than {ratio:N0} times its size, as files made to do harm do."), name, "Unpack it and import the table itself if you trust the file.");
}
