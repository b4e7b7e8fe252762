import type {} from '@eighths/widget/jsx';
import '@eighths/widget/define.js';
import { StrictMode, useState } from 'react';
import { createRoot } from 'react-dom/client';

function Page() {
  const [rounds, setRounds] = useState(4);
  const [told, setTold] = useState('');
  return (
    <StrictMode>
      <button type="button" onClick={() => setRounds(rounds + 1)}>
        One round more
      </button>
      <eighths-log-cabin
        id="block"
        finished={9}
        rounds={rounds}
        strips-wide="2"
        strips-narrow="1 1/2"
        wide={['1 1/4', 1, 1, 1, 1].slice(0, rounds)}
        narrow="1/2"
        oneighths-change={({ detail }) => setTold(JSON.stringify(detail.plan))}
      >
        <p>Nine inches.</p>
      </eighths-log-cabin>
      <pre id="told">{told}</pre>
    </StrictMode>
  );
}

const root = document.querySelector('#root');
if (root !== null) createRoot(root).render(<Page />);
