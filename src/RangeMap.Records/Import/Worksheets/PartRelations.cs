namespace RangeMap.Records;

/// <summary>A reference from one part of a workbook to another.</summary>
/// <param name="Id">How the part refers to it.</param>
/// <param name="Kind">The last word of its type, such as worksheet or styles.</param>
/// <param name="Target">The file it points to, from the root of the workbook.</param>
internal sealed record PartRelation(string Id, string Kind, string Target);

/// <summary>Reads the references of a part (Open Packaging Conventions, ECMA-376 part 2, 9.3).</summary>
internal static class PartRelations
{
    /// <param name="files">The files of the workbook.</param>
    /// <param name="part">The part that refers; "" for the workbook as a whole.</param>
    /// <param name="limits">How much the list may hold.</param>
    public static IReadOnlyList<PartRelation> Of(FileBundle files, string part, FileLimits limits)
    {
        var folder = part[..(part.LastIndexOf('/') + 1)];
        var list = $"{folder}_rels/{part[folder.Length..]}.rels";
        if (!files.Has(list))
            return [];
        using var xml = UntrustedXml.Open(files, list, limits, limits.DescriptionBytes);
        var relations = new List<PartRelation>();
        while (xml.ReadStart())
        {
            if (xml.Element != "Relationship" || xml.Attribute("TargetMode") == "External")
                continue;
            var type = xml.Attribute("Type") ?? "";
            relations.Add(new(xml.Attribute("Id") ?? "", type[(type.LastIndexOf('/') + 1)..], Resolve(folder, xml.Attribute("Target") ?? "")));
        }

        return relations;
    }

    /// <summary>A target is relative to the folder of the part, or begins with a slash at the root; one that leaves the root is no file there.</summary>
    private static string Resolve(string folder, string target)
    {
        var path = new List<string>();
        foreach (var step in (target.StartsWith('/') ? target : folder + target).Split('/', StringSplitOptions.RemoveEmptyEntries))
        {
            if (step == ".." && path.Count > 0)
                path.RemoveAt(path.Count - 1);
            else if (step != ".")
                path.Add(step);
        }

        return string.Join('/', path);
    }
}
