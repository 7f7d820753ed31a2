using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace RangeMap.Browser.Tests;

/// <summary>The organiser of a scheme at the desk: what is pressed, typed and seen there. Every step is checked for access and kept as a picture.</summary>
internal sealed class Organiser(Visitor visitor, string device)
{
    /// <summary>The page.</summary>
    public IPage Page => visitor.Page;

    /// <summary>Answers with a status to a person's doings.</summary>
    public ILocator Decision => Page.GetByRole(AriaRole.Region, new() { Name = "Decision" });

    /// <summary>Lines of the review queue.</summary>
    public ILocator Queue => Page.Locator(".queue li");

    /// <summary>Opens the desk and signs in.</summary>
    public async Task SignInAsync(string token)
    {
        await visitor.OpenAsync("desk.html");
        await SignInAgainAsync(token);
        await Expect(Page.GetByRole(AriaRole.Heading, new() { Name = "Send records" })).ToBeVisibleAsync();
    }

    /// <summary>Signs in on the page that asks for it.</summary>
    public async Task SignInAgainAsync(string token)
    {
        await Page.GetByLabel("Your token").FillAsync(token);
        await Button("Sign in").ClickAsync();
    }

    /// <summary>Chooses a file, names its data set, and sends it.</summary>
    public async Task SendAsync(string name, string text, string dataset)
    {
        await ChooseAsync(name, text, dataset);
        await Button("Send").ClickAsync();
        await SeesMappingAsync(name);
    }

    /// <summary>Chooses a file and names its data set.</summary>
    public async Task ChooseAsync(string name, string text, string dataset)
    {
        await Page.GetByLabel("A file of records").SetInputFilesAsync(PayloadOf(name, text));
        await Page.GetByLabel("Data set").FillAsync(dataset);
    }

    /// <summary>Waits until a file that was sent shows its columns.</summary>
    public async Task SeesMappingAsync(string name)
    {
        await Expect(Page.GetByRole(AriaRole.Heading, new() { Name = name })).ToBeVisibleAsync();
        await Expect(Page.Locator(".mapping")).ToBeVisibleAsync();
    }

    /// <summary>A file as the browser is given it.</summary>
    public static FilePayload PayloadOf(string name, string text) => new() { Name = name, MimeType = "text/plain", Buffer = System.Text.Encoding.UTF8.GetBytes(text) };

    /// <summary>States what a column means.</summary>
    public Task ReadAsAsync(string column, string term) => Page.GetByLabel($"{column} is read as").SelectOptionAsync(new SelectOptionValue { Label = term });

    /// <summary>Starts the import, and waits for its figures: rows read, new, changed, known, refused.</summary>
    public async Task ImportsAsync(params string[] figures)
    {
        await Button("Import").ClickAsync();
        await Expect(Page.Locator(".figures dd")).ToHaveTextAsync(figures);
    }

    /// <summary>Goes to the review and waits for its first record.</summary>
    public async Task ReviewsAsync()
    {
        await Page.GetByRole(AriaRole.Link, new() { Name = "Review", Exact = true }).ClickAsync();
        await Expect(Page.GetByRole(AriaRole.Region, new() { Name = "Doubts" })).ToBeVisibleAsync();
        await Expect(Page.Locator(".nearby")).Not.ToBeEmptyAsync();
    }

    /// <summary>Presses keys, one after the other.</summary>
    public async Task PressAsync(params string[] keys)
    {
        foreach (var key in keys)
            await Page.Keyboard.PressAsync(key);
    }

    /// <summary>A button by its name.</summary>
    public ILocator Button(string name) => Page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true });

    /// <summary>Checks what is shown for access and width, and keeps a picture of it beside the tests.</summary>
    public async Task StepAsync(string name)
    {
        await Axe.AssertAccessibleAsync(Page, $"{device}, {name}");
        var (width, room) = (await Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"), await Page.EvaluateAsync<int>("() => window.innerWidth"));
        Assert.True(width <= room, $"{device}, {name}: {width} pixels wide where {room} are shown.");
        await Page.ScreenshotAsync(new() { Path = Path.Combine(AppContext.BaseDirectory, "pictures", $"desk-{device}-{name}.png") });
    }
}
