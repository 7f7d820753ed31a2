using Microsoft.AspNetCore.OpenApi;

namespace RangeMap.Server;

/// <summary>What the OpenAPI document says of the whole interface.</summary>
internal static class OpenApiDescription
{
    public static void Configure(OpenApiOptions options)
    {
        options.AddSchemaTransformer(SchemaDescription.Complete);
        options.AddOperationTransformer((operation, _, _) =>
        {
            OtherAnswers.Merge(operation);
            return Task.CompletedTask;
        });
        options.AddDocumentTransformer((document, _, _) =>
        {
            document.Info.Title = "RangeMap";
            document.Info.Version = "v1";
            document.Info.Description =
                "Presence of species by national grid square and period, and the spread of arriving species. Periods are ISO 8601 intervals with commas between "
                + "them; open ends are written `..`. Errors are problem details (RFC 9457).";
            // The address that the server was asked at is no part of the description.
            document.Servers?.Clear();
            return Task.CompletedTask;
        });
    }
}
