import { LanguageSwitch } from '../../parts/language-switch.tsx'
import { useSetting } from '../../parts/setting.tsx'
import type { Language } from '../../words/languages.ts'

/** The head of a call sheet: which tree, which language the caller speaks, and the next call. */
export function CallHead({
  languages,
  caller,
  onCaller,
  languageLost,
  onNewCall,
  trees,
  onTree,
  due
}: {
  languages: readonly Language[]
  caller: string
  onCaller: (tag: string) => void
  languageLost: boolean
  onNewCall: () => void
  /** By their ids. */
  trees: readonly string[]
  /** Goes on with another tree, and the facts that it asks about as well. */
  onTree: (tree: string) => void
  /** How many calls are to be made today. */
  due: number
}) {
  const { words, tree } = useSetting()
  return (
    <header class="masthead desk-head">
      <p class="masthead-name">
        <strong>Jarside</strong>
        <span>{words.t('ui:desk.title')}</span>
        {trees.length > 1 ? (
          <select
            class="desk-tree"
            aria-label={words.t('ui:desk.tree')}
            value={tree.id}
            onChange={event => onTree(event.currentTarget.value)}
          >
            {trees.map(id => (
              <option key={id} value={id}>
                {words.t(`${id}:title`)}
              </option>
            ))}
          </select>
        ) : (
          <span class="masthead-title">{words.t(`${tree.id}:title`)}</span>
        )}
        {tree.review.state === 'draft' && (
          <span class="masthead-draft">{words.t('ui:draft-short')}</span>
        )}
      </p>
      <div class="masthead-moves">
        <fieldset class="desk-languages">
          <legend>{words.t('ui:desk.caller-speaks')}</legend>
          <LanguageSwitch
            languages={languages}
            look="desk-language"
            pressed={caller}
            onLanguage={onCaller}
          />
        </fieldset>
        <a class="quiet desk-log" href="./contacts.html">
          {words.t('ui:contacts.title')}
        </a>
        {due > 0 && (
          <a class="quiet desk-due" href="#calls-to-make">
            {words.t('ui:contacts.slips.due', { count: due })}
          </a>
        )}
        <button type="button" class="quiet" data-move="start-over" onClick={onNewCall}>
          {words.t('ui:desk.new-call')}
        </button>
      </div>
      <p class="masthead-trouble" role="status">
        {languageLost && words.t('ui:language-not-loaded')}
      </p>
    </header>
  )
}
