using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Mvc;

namespace RangeMap.Server;

/// <summary>The one place where a failure becomes an answer: RFC 9457 problem details that say what is wrong and how to mend it.</summary>
internal sealed class ProblemAnswers(IProblemDetailsService problems, ILogger<ProblemAnswers> log) : IExceptionHandler
{
    public async ValueTask<bool> TryHandleAsync(HttpContext context, Exception exception, CancellationToken cancellationToken)
    {
        var details = Describe(exception);
        if (details.Status == StatusCodes.Status500InternalServerError)
            log.LogFailure(exception, context.Request.Path);
        context.Response.StatusCode = details.Status!.Value;
        return await problems.TryWriteAsync(new() { HttpContext = context, ProblemDetails = details, Exception = exception });
    }

    /// <summary>Gives the answers that no handler wrote, such as that of an address that is not served, a sentence to act on.</summary>
    public static void Configure(ProblemDetailsOptions options) => options.CustomizeProblemDetails = answer => answer.ProblemDetails.Detail ??= answer.ProblemDetails.Status switch
    {
        StatusCodes.Status404NotFound => "Nothing is served at this address. /reference describes the addresses that are.",
        StatusCodes.Status405MethodNotAllowed => "This address does not take that method; /reference tells which it takes.",
        _ => "/reference describes what can be asked and how.",
    };

    private static string TitleOf(int status) => status switch
    {
        StatusCodes.Status401Unauthorized => "A token is needed",
        StatusCodes.Status403Forbidden => "Not allowed",
        StatusCodes.Status404NotFound => "Not found",
        StatusCodes.Status409Conflict => "Not as things stand",
        StatusCodes.Status413PayloadTooLarge => "Too long",
        _ => "The question cannot be answered",
    };

    private static ProblemDetails Describe(Exception exception) => exception switch
    {
        UserException problem => new()
        {
            Title = TitleOf(problem.Status),
            Status = problem.Status,
            Detail = $"{problem.Message} {problem.Mend}",
            Extensions = { ["parameter"] = problem.Where },
        },
        EditionPassedException passed => new() { Title = "The data are changing", Status = StatusCodes.Status503ServiceUnavailable, Detail = passed.Message },
        BadHttpRequestException bad => new() { Title = "The request cannot be read", Status = bad.StatusCode, Detail = bad.Message },
        _ => new()
        {
            Title = "The server failed",
            Status = StatusCodes.Status500InternalServerError,
            Detail = "This is a fault of the server, not of the request. It has been logged.",
        },
    };
}

internal static partial class ProblemLog
{
    [LoggerMessage(Level = LogLevel.Error, Message = "The request for {Path} failed.")]
    public static partial void LogFailure(this ILogger log, Exception exception, string path);
}
