import { mount } from 'svelte';
import App from './App.svelte';
import { pageHost } from './host/pageHost.ts';
import { say } from './parts/words.ts';
import { Place } from './state/place.svelte.ts';
import './page.css';

document.documentElement.lang = say.language;
const target = document.getElementById('page');
if (!target) throw new Error('The page has no element with the id "page"');
mount(App, { target, props: { place: new Place(pageHost()) } });
