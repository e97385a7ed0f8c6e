import { type CautionTopic, cautions } from "@delaywright/documents";

/** A caution, where its hazard is. The first sentence carries the weight. */
export function Caution({ topics }: { readonly topics: readonly CautionTopic[] }) {
  const [first = "", ...others] = topics.flatMap((topic) => cautions[topic]);
  return (
    <div className="caution" role="note">
      <b>{first}</b>
      {others.join(" ")}
    </div>
  );
}
