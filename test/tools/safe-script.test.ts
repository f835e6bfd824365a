import { scriptErrors } from "../../tools/build/safe-script";

test.each([
  ['eval("1")', "runs text: eval"],
  ['(0,eval)("1")', "runs text: eval"],
  ['new Function("return 1")', "runs text: Function"],
  ['const f=Function("return 1")', "runs text: Function"],
  ['setTimeout("go()",1)', "runs text: a timer"],
  ["setInterval(`go()`)", "runs text: a timer"],
  ['a.href="javascript:go()"', "runs text: javascript:"],
  ['importScripts("x.js")', "loads a script"],
  ['import("x")', "loads a script"],
  ['fetch("x")', "asks the network"],
  ["new XMLHttpRequest", "asks the network"],
  ['navigator.sendBeacon("x")', "asks the network"],
  ['new WebSocket("x")', "asks the network"],
  ['new EventSource("x")', "asks the network"],
  ["p.innerHTML=t", "makes a page of text"],
  ["p.outerHTML=t", "makes a page of text"],
  ['p.insertAdjacentHTML("beforeend",t)', "makes a page of text"],
  ["document.write(t)", "makes a page of text"],
  ['x="https://elsewhere.example/a"', "names https://elsewhere.example/a"],
  ['x="http://www.w3.org.elsewhere.example/"', "names http://www.w3.org.elsewhere.example/"],
])("%s is found", (script, what) => {
  expect(scriptErrors("a.js", script)).toEqual([`a.js ${what}`]);
});

test("what only looks like it is let through", () => {
  const script = `setTimeout(() => go(), 1); retrieval(1); prefetch; text="evaluate (again)"; x instanceof Function;
    svg="http://www.w3.org/2000/svg"; office="https://appsforoffice.microsoft.com/lib/1/hosted/office.js"`;
  expect(scriptErrors("a.js", script)).toEqual([]);
});
