import type { Finding } from '../../findings/finding.ts'
import type { Places } from '../../findings/place.ts'
import { verdictsOf } from '../../tree/caution.ts'
import type { Branch, Question, Tree } from '../../tree/tree.ts'
import { found } from '../found.ts'
import type { Property } from '../property.ts'
import { standing } from '../proved.ts'

/** Every answer of every question leads to a question that is there, or ends with a verdict on the batch. */
export const noDeadEnd: Property = {
  id: 'no-dead-end',
  kind: 'shape',
  needsWalks: false,
  prove({ tree }, places) {
    const ends = new Set(verdictsOf(tree, 'batch'))
    const cases = Object.values(tree.questions).flatMap(question =>
      waysOut(tree, question).map(([answer, branch]) =>
        leadsOn(tree, branch, ends) ? [] : [deadEnd(question, answer, places)]
      )
    )
    // A tree that does not begin anywhere ends nowhere.
    if (Object.hasOwn(tree.questions, tree.start)) return standing(this.id, this.kind, cases)
    const start = { id: tree.start }
    return standing(this.id, this.kind, [...cases, [deadEnd(start, 'start', places)]])
  }
}

/** Each answer that a question can get, with what is authored for it. */
function waysOut(
  tree: Tree,
  question: Question
): readonly (readonly [string, Branch | undefined])[] {
  switch (question.kind) {
    case 'choice': {
      const asked = tree.observations[question.asks]
      const listed =
        asked?.kind === 'choice' && asked.settles === undefined
          ? asked.answers.map(({ id }) => id)
          : []
      return [...listed, 'unsure'].map(id => [id, question.answers[id]])
    }
    case 'signs':
      return [
        ...question.turns.map(turn => [turn.signs.join(', '), turn] as const),
        ['none of these', question.otherwise]
      ]
    case 'measure':
      return [
        ...question.ranges.map((range, index) => [`range ${index + 1}`, range] as const),
        ['borderline', question.borderline],
        ['unsure', question.unsure]
      ]
  }
}

function leadsOn(tree: Tree, branch: Branch | undefined, ends: ReadonlySet<string>): boolean {
  if (branch === undefined) return false
  const { leads } = branch
  return 'to' in leads ? Object.hasOwn(tree.questions, leads.to) : ends.has(leads.end)
}

function deadEnd({ id }: Pick<Question, 'id'>, answer: string, places: Places): Finding {
  const place = places[`questions/${id}/${answer}`] ?? places[`questions/${id}`]
  return found('leads-nowhere', place, { question: id, answer })
}
