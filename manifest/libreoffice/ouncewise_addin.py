"""The Calc add-in: one UNO component for every function of the catalogue, and the two menu commands.

No function is named here. What exists is read from functions.json beside this file, which is made from the catalogue
like the type library and the configuration.
"""

import json
import os
import weakref

import uno
import unohelper
from com.sun.star.lang import Locale, XLocalizable, XServiceInfo, XServiceName
from com.sun.star.sheet import ResultEvent, XAddIn, XVolatileResult
from com.sun.star.task import XJob, XJobExecutor

from ouncewise_calc import cells, menu
from ouncewise_calc.bridge import Bridge, CalculationUnavailable
from ouncewise_calc.settings import read_settings

try:
    from ouncewise.libreoffice import XOunce
except ImportError:
    # While the package is being registered its type library is not live yet; only the names below are asked for then.
    class XOunce:
        pass


SERVICE = "OUNCE"
IDENTIFIER = "ouncewise.libreoffice"
FUNCTIONS = IDENTIFIER + ".Functions"
MENU = IDENTIFIER + ".Menu"
ADD_IN = "com.sun.star.sheet.AddIn"


class Session:
    """What both components share, made when first needed."""

    _made = None

    def __init__(self, context):
        folder = _extension_folder(context)
        with open(os.path.join(folder, "functions.json"), encoding="utf-8") as file:
            self.functions = json.load(file)
        self.settings_path = os.path.join(_user_folder(context), "ouncewise", "settings.json")
        self.bridge = Bridge(
            os.path.join(folder, "server.cjs"), lambda: read_settings(self.settings_path)
        )

    @classmethod
    def of(cls, context):
        if cls._made is None:
            cls._made = cls(context)
        return cls._made


def _extension_folder(context):
    packages = context.getValueByName(
        "/singletons/com.sun.star.deployment.PackageInformationProvider"
    )
    return uno.fileUrlToSystemPath(packages.getPackageLocation(IDENTIFIER))


def _user_folder(context):
    paths = context.ServiceManager.createInstanceWithContext(
        "com.sun.star.util.PathSubstitution", context
    )
    return uno.fileUrlToSystemPath(paths.substituteVariables("$(user)", True))


class RangeResult(unohelper.Base, XVolatileResult):
    """A range from a function that can also give a single text.

    Such a function is declared as `any`, and Calc takes a range inside an `any` only from a result that reports
    changes later. This one reports at once and never again.
    """

    # Calc keeps a listener for every different object until the document is closed, so equal results share one.
    _known = weakref.WeakValueDictionary()

    def __init__(self, rows):
        self._rows = rows

    @classmethod
    def of(cls, answer):
        key = json.dumps(answer)
        known = cls._known.get(key)
        if known is None:
            known = cls(cells.rows_from_json(answer))
            cls._known[key] = known
        return known

    def addResultListener(self, listener):
        event = ResultEvent()
        event.Source = self
        event.Value = uno.Any("[][]any", self._rows)
        listener.modified(event)

    def removeResultListener(self, listener):
        pass


def text_result(answer):
    return RangeResult.of(answer) if isinstance(answer, list) else cells.cell_from_json(answer)


class OunceFunctions(unohelper.Base, XAddIn, XServiceName, XLocalizable, XServiceInfo, XOunce):
    def __init__(self, context):
        self._session = Session.of(context)
        self._locale = Locale("en", "US", "")

    def __getattr__(self, name):
        """The methods of XOunce, one per function, made on first use."""
        session = self.__dict__.get("_session")
        if session is None or name not in session.functions:
            raise AttributeError(name)
        bridge = session.bridge
        result = text_result if session.functions[name]["text"] else cells.rows_from_json

        def method(*arguments):
            try:
                answer = bridge.call(name, [cells.to_json(argument) for argument in arguments])
            except CalculationUnavailable:
                answer = cells.UNAVAILABLE
            except Exception:
                # An exception would reach the cell as Err:502, "invalid argument", which is misleading.
                answer = cells.FAULTY
            return result(answer)

        self.__dict__[name] = method
        return method

    # XServiceName, XServiceInfo
    def getServiceName(self):
        return SERVICE

    def getImplementationName(self):
        return FUNCTIONS

    def supportsService(self, name):
        return name in self.getSupportedServiceNames()

    def getSupportedServiceNames(self):
        return (SERVICE, ADD_IN)

    # XLocalizable
    def setLocale(self, locale):
        self._locale = locale

    def getLocale(self):
        return self._locale

    # XAddIn; the spelling "Funtion" is the interface's own
    def getProgrammaticFuntionName(self, display_name):
        return display_name.split(".")[-1]

    def getDisplayFunctionName(self, name):
        return SERVICE + "." + name

    def getFunctionDescription(self, name):
        return self._session.functions[name]["summary"]

    def getDisplayArgumentName(self, name, position):
        return self._session.functions[name]["parameters"][position]["name"]

    def getArgumentDescription(self, name, position):
        return self._session.functions[name]["parameters"][position]["description"]

    def getProgrammaticCategoryName(self, name):
        return "Add-In"

    def getDisplayCategoryName(self, name):
        return "Add-In"


class OunceMenu(unohelper.Base, XJobExecutor, XJob, XServiceInfo):
    """Tools > Add-Ons > Ouncewise. A macro gets the same text from `execute`, without a window."""

    def __init__(self, context):
        self._context = context

    # XJobExecutor
    def trigger(self, command):
        session = Session.of(self._context)
        if command == "choose-node":
            menu.choose_node(self._context, session)
        else:
            menu.show(self._context, menu.report(session))

    # XJob
    def execute(self, arguments):
        return menu.report(Session.of(self._context))

    # XServiceInfo
    def getImplementationName(self):
        return MENU

    def supportsService(self, name):
        return name in self.getSupportedServiceNames()

    def getSupportedServiceNames(self):
        return (MENU,)


g_ImplementationHelper = unohelper.ImplementationHelper()
g_ImplementationHelper.addImplementation(OunceFunctions, FUNCTIONS, (SERVICE, ADD_IN))
g_ImplementationHelper.addImplementation(OunceMenu, MENU, (MENU,))
