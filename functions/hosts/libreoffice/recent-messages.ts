/** How many different messages are kept; a window shows no more. */
const kept = 20;

/** The last different messages. A column of the same mistake is one message. */
export class RecentMessages {
  private readonly messages = new Set<string>();

  add(message: string): void {
    this.messages.delete(message);
    this.messages.add(message);
    for (const oldest of this.messages) {
      if (this.messages.size <= kept) break;
      this.messages.delete(oldest);
    }
  }

  newestFirst(): readonly string[] {
    return [...this.messages].reverse();
  }
}
