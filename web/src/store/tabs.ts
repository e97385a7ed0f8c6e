/** What one tab tells the others, after it was written. */
export interface News {
  readonly documents: readonly string[];
  readonly settings: boolean;
}

function isNews(data: unknown): data is News {
  const { documents, settings } = (data ?? {}) as Partial<News>;
  return (
    Array.isArray(documents) && documents.every((path) => typeof path === "string") && typeof settings === "boolean"
  );
}

/** The other tabs of the same bench. Where the browser has no channel they hear of changes when they are looked at again. */
export class Tabs {
  private readonly channel: BroadcastChannel | null;

  constructor(name: string, hear: (news: News) => void) {
    this.channel = typeof BroadcastChannel === "undefined" ? null : new BroadcastChannel(name);
    this.channel?.addEventListener("message", ({ data }) => {
      if (isNews(data)) hear(data);
    });
  }

  tell(news: News): void {
    this.channel?.postMessage(news);
  }

  close(): void {
    this.channel?.close();
  }
}
