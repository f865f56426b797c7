import { answerFromThread } from './answer-from-thread.js';

answerFromThread();
