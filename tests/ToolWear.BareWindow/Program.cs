using Terminal.Gui.App;
using Terminal.Gui.Views;

// The least that the library of views can show: what the start of the program is held against.
using IApplication app = Application.Create();
app.Init();
using Window window = new() { Title = "bare" };
using Label label = new() { Text = "a bare window" };
window.Add(label);
app.Run(window);
