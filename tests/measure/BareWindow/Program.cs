using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Views;

// What the library alone costs at a terminal: one window with one line of text, by which the measurement knows that it is there.
Driver.Force16Colors = true;
using IApplication app = Application.Create();
app.Init("ansi");
using var window = new Runnable();
window.Add(new Label { Text = "? help" });
app.Run(window);
