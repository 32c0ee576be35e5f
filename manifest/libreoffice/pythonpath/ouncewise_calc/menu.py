"""The menu commands: what the last errors said, and where Node.js is."""

from .bridge import CalculationUnavailable
from .find_node import NodeNotFound, find_node
from .settings import read_settings, write_settings

TITLE = "Ouncewise"
# com.sun.star.awt.MessageBoxButtons.BUTTONS_OK and com.sun.star.ui.dialogs.ExecutableDialogResults.OK
_OK_BUTTON = 1
_CHOSEN = 1


def report(session):
    """The last error messages, newest first, and which Node.js is used."""
    bridge = session.bridge
    try:
        messages = bridge.ask({"messages": True})
    except CalculationUnavailable as why:
        return "No calculation is possible at the moment.\n\n%s\n\nSettings file: %s" % (why, session.settings_path)
    said = "\n".join(messages) if messages else "No error since the calculations were started."
    return "%s\n\nNode.js %s at %s\nSettings file: %s" % (
        said,
        bridge.node_version,
        bridge.node_path,
        session.settings_path,
    )


def show(context, text):
    frame = _desktop(context).getCurrentFrame()
    window = frame.getContainerWindow() if frame is not None else None
    if window is None:
        return
    from com.sun.star.awt.MessageBoxType import INFOBOX

    window.getToolkit().createMessageBox(window, INFOBOX, _OK_BUTTON, TITLE, text).execute()


def choose_node(context, session):
    picker = context.ServiceManager.createInstanceWithContext("com.sun.star.ui.dialogs.FilePicker", context)
    picker.setTitle("Choose the Node.js program (node or node.exe)")
    if picker.execute() != _CHOSEN:
        return
    import uno

    settings = read_settings(session.settings_path)
    settings.node = uno.fileUrlToSystemPath(picker.getFiles()[0])
    try:
        find_node(settings, environment={})
    except NodeNotFound:
        show(context, settings.node + " is not a program that can be started. Nothing was changed.")
        return
    write_settings(session.settings_path, settings)
    session.bridge.restart()
    show(context, report(session))
    recalculate(context)


def recalculate(context):
    document = _desktop(context).getCurrentComponent()
    if document is not None and hasattr(document, "calculateAll"):
        document.calculateAll()


def _desktop(context):
    return context.ServiceManager.createInstanceWithContext("com.sun.star.frame.Desktop", context)
