import { mount } from 'svelte';
import App from './App.svelte';
import { pageHost } from './host/pageHost.ts';
import { Place } from './state/place.svelte.ts';
import './page.css';

const target = document.getElementById('page');
if (!target) throw new Error('The page has no element with the id "page"');
mount(App, { target, props: { place: new Place(pageHost()) } });
