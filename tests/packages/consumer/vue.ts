import type {} from '@eighths/widget/vue';
import '@eighths/widget/define.js';
import type { ChangeDetail } from '@eighths/widget';
import { createApp, defineComponent, h, ref } from 'vue';

const Page = defineComponent(() => {
  const rounds = ref(4);
  const told = ref('');
  return () => [
    h('button', { type: 'button', onClick: () => (rounds.value += 1) }, 'One round more'),
    h(
      'eighths-log-cabin',
      {
        id: 'block',
        finished: 9,
        rounds: rounds.value,
        log: ['1', '3/4', '3/4', '1/2', '1/2'].slice(0, rounds.value),
        'onEighths-change': ({ detail }: CustomEvent<ChangeDetail>) => {
          told.value = JSON.stringify(detail.plan);
        },
      },
      h('p', 'Nine inches.'),
    ),
    h('pre', { id: 'told' }, told.value),
  ];
});

createApp(Page).mount('#root');
