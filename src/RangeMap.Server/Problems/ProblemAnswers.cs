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

    private static ProblemDetails Describe(Exception exception) => exception switch
    {
        UserException problem => new()
        {
            Title = problem.Status == StatusCodes.Status404NotFound ? "Not found" : "The question cannot be answered",
            Status = problem.Status,
            Detail = $"{problem.Message} {problem.Mend}",
            Extensions = { ["parameter"] = problem.Where },
        },
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
