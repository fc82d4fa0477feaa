let opened: Promise<WebSocket> | null = null;

/** Sends a picture or a clip to the page's server; resolves when it has been taken. One at a time. A form post takes twice as long. */
export async function post(bytes: Uint8Array<ArrayBuffer> | ArrayBuffer): Promise<void> {
  const socket = await (opened ??= open());
  await new Promise<void>((resolve, reject) => {
    socket.onmessage = () => {
      resolve();
    };
    socket.onclose = ({ reason }) => {
      reject(new Error(`the page's server took no more: ${reason}`));
    };
    socket.send(bytes);
  });
}

function open(): Promise<WebSocket> {
  const socket = new WebSocket(`ws://${location.host}`);
  return new Promise((resolve, reject) => {
    socket.onopen = () => {
      resolve(socket);
    };
    socket.onerror = () => {
      reject(new Error("the page's server takes no pictures"));
    };
  });
}
