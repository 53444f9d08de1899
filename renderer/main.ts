import { mount } from 'svelte';
import App from './App.svelte';
import { pageHost } from './host/pageHost.ts';
import { preferences } from './state/preferences.svelte.ts';
import { Place } from './state/place.svelte.ts';
import './page.css';
import './contrast.css';

const target = document.getElementById('page');
if (!target) throw new Error('The page has no element with the id "page"');
const host = pageHost();
await preferences.follow(host, navigator.languages);
mount(App, { target, props: { place: new Place(host) } });
