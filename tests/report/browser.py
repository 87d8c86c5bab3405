"""Drives headless Chromium over its debugging pipe, with nothing but Python: open a page, ask, look, print."""
import base64
import json
import os
import shutil
import subprocess
import tempfile

FLAGS = ("--headless --no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking "
         "--disable-component-update --disable-sync --disable-dev-shm-usage --hide-scrollbars "
         "--remote-debugging-pipe").split()


class Browser:
    """One tab. Collects console messages, exceptions, log entries and every request it makes."""

    def __init__(self):
        program = shutil.which("chromium")
        assert program, "chromium is not installed: apt-get install chromium"
        self.profile = tempfile.mkdtemp(prefix="maybough-page-")
        to_read, self.to = os.pipe()
        self.back, to_write = os.pipe()

        def wire():
            os.dup2(to_read, 103), os.dup2(to_write, 104)
            os.dup2(103, 3), os.dup2(104, 4)

        self.process = subprocess.Popen([program, *FLAGS, f"--user-data-dir={self.profile}", "about:blank"],
                                        preexec_fn=wire, pass_fds=(3, 4), stdout=subprocess.DEVNULL,
                                        stderr=subprocess.DEVNULL)
        os.close(to_read), os.close(to_write)
        self.number, self.rest, self.session = 0, b"", None
        self.problems, self.requests, self.loaded = [], [], False
        target = self.ask("Target.createTarget", url="about:blank")["targetId"]
        self.session = self.ask("Target.attachToTarget", targetId=target, flatten=True)["sessionId"]
        for domain in ("Page", "Runtime", "Log", "Network"):
            self.ask(domain + ".enable")

    def close(self):
        self.process.kill()
        self.process.wait()
        os.close(self.to), os.close(self.back)
        shutil.rmtree(self.profile, ignore_errors=True)

    def ask(self, method, **parameters):
        self.number += 1
        message = {"id": self.number, "method": method, "params": parameters}
        if self.session:
            message["sessionId"] = self.session
        os.write(self.to, json.dumps(message).encode() + b"\0")
        while True:
            answer = self.receive()
            if answer.get("id") == self.number:
                assert "error" not in answer, (method, answer["error"])
                return answer["result"]

    def receive(self):
        while b"\0" not in self.rest:
            piece = os.read(self.back, 1 << 20)
            assert piece, "the browser went away"
            self.rest += piece
        text, self.rest = self.rest.split(b"\0", 1)
        message = json.loads(text)
        method, parameters = message.get("method"), message.get("params", {})
        if method == "Runtime.consoleAPICalled" and parameters["type"] in ("error", "warning", "assert"):
            self.problems.append(str(parameters["args"]))
        elif method == "Runtime.exceptionThrown":
            self.problems.append(str(parameters["exceptionDetails"]))
        elif method == "Log.entryAdded" and parameters["entry"]["level"] in ("error", "warning"):
            self.problems.append(str(parameters["entry"]))
        elif method == "Network.requestWillBeSent":
            self.requests.append(parameters["request"]["url"])
        elif method == "Page.loadEventFired":
            self.loaded = True
        return message

    def screen(self, width, height, scheme):
        self.ask("Emulation.setDeviceMetricsOverride", width=width, height=height, deviceScaleFactor=1,
                 mobile=width < 600)
        self.ask("Emulation.setEmulatedMedia", features=[{"name": "prefers-color-scheme", "value": scheme}])

    def open(self, path):
        self.loaded, self.requests, self.problems = False, [], []
        self.ask("Page.navigate", url="file://" + str(path))
        while not self.loaded:
            self.receive()

    def run(self, expression):
        result = self.ask("Runtime.evaluate", expression=expression, returnByValue=True, awaitPromise=True)
        assert "exceptionDetails" not in result, result["exceptionDetails"]
        return result["result"].get("value")

    def key(self, name, code):
        for kind in ("keyDown", "keyUp"):
            self.ask("Input.dispatchKeyEvent", type=kind, key=name, code=name, windowsVirtualKeyCode=code,
                     **({"text": "\r"} if name == "Enter" and kind == "keyDown" else {}))

    def picture(self, path):
        data = self.ask("Page.captureScreenshot", format="png", captureBeyondViewport=True)["data"]
        path.write_bytes(base64.b64decode(data))

    def paper(self, path):
        path.write_bytes(base64.b64decode(self.ask("Page.printToPDF", preferCSSPageSize=True)["data"]))
