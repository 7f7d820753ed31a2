namespace RangeMap.Server;

/// <summary>How sheets for the field look, on paper and on a screen.</summary>
internal static class SheetStyle
{
    /// <summary>The style sheet.</summary>
    public const string Css = """
        :root{color-scheme:light dark}body{font:15px/1.45 system-ui,sans-serif;max-width:52rem;margin:2rem auto;padding:0 1rem}
        h1{font-size:1.4rem;margin:0}h2{font-size:1.1rem;margin:1.5rem 0 .25rem}p{margin:.35rem 0}.small{opacity:.75}.caution{border:1px solid;padding:.5rem .75rem}
        table{border-collapse:collapse;width:100%}th,td{border-bottom:1px solid color-mix(in srgb,currentColor 30%,transparent);padding:.35rem .5rem .35rem 0;text-align:left;vertical-align:top}
        td.room{width:22%}td.room.wide{width:34%}.box{display:inline-block;width:1em;height:1em;border:1.5px solid;vertical-align:-.15em}@media print{body{margin:0;max-width:none}tr{break-inside:avoid}}
        """;
}
