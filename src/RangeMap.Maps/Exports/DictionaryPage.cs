using System.Text;

namespace RangeMap.Maps;

/// <summary>The data dictionary of all exports, as a page of text made from the definitions of their columns.</summary>
public static class DictionaryPage
{
    /// <summary>The page, Markdown.</summary>
    public static string Write()
    {
        var page = new StringBuilder("# Data dictionary\n\nThe columns of the exports, the same in every format. This page is made from the definitions in the program; a test holds both together.\n");
        foreach (var table in ExportTables.All)
        {
            page.Append("\n## ").Append(table.Title).Append(" (`").Append(table.Name).Append("`)\n\n").Append(table.Description);
            page.Append(" A row is told from all others by ").AppendJoin(", ", table.Key.Select(name => $"`{name}`")).Append(".\n\n");
            page.Append("| column | kind | may be empty | meaning | published term |\n| --- | --- | --- | --- | --- |\n");
            foreach (var column in table.Columns)
                page.Append("| `").Append(column.Name).Append("` | ").Append(CsvwMetadata.DataType(column.Kind)).Append(" | ").Append(column.Required ? "no" : "yes").Append(" | ").Append(column.Description).Append(" | ").Append(column.Term ?? "").Append(" |\n");
        }

        return page.ToString();
    }
}
