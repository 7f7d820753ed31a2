namespace RangeMap.Server;

/// <summary>
/// Keeps finished answers of one edition. It holds a bounded number and, when full, forgets everything at once: an answer
/// is made again in milliseconds, while keeping count of uses would cost every warm request.
/// </summary>
internal sealed class AnswerCache
{
    private const int MostAnswers = 4096;

    private readonly MadeOnce<object, object> _answers = new();

    /// <summary>The answer to a question; made at most once while it is kept.</summary>
    /// <param name="question">A value that is equal for equal questions, of a type of its own for each kind of answer.</param>
    /// <param name="make">Makes the answer.</param>
    public T GetOrMake<T>(object question, Func<T> make)
        where T : class
    {
        if (_answers.Count >= MostAnswers)
            _answers.Clear();
        return (T)_answers.GetOrMake(question, make);
    }
}
